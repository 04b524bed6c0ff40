using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>An order, judged.</summary>
/// <param name="order">The order.</param>
/// <param name="trials">The trials.</param>
internal sealed class Judgement(Order order, TrialBook trials)
{
    private readonly IReadOnlyList<Section> _sums =
    [
        LoadJudge.Judge(order),
        SwitchJudge.Judge(order),
        CordJudge.Judge(order),
        SensorJudge.Judge(order),
        HeatJudge.Judge(order),
        ProtectionJudge.Judge(order),
    ];

    private IReadOnlyList<Section>? _sections;

    /// <summary>Gets the order.</summary>
    public Order Order => order;

    /// <summary>Gets all sections, in the order in which they are read.</summary>
    public IReadOnlyList<Section> Sections => _sections ??=
    [
        _sums[0],
        StartJudge.Judge(order, trials),
        .. _sums.Skip(1).Take(3).Where(section => section.Findings.Count > 0),
        TeachJudge.Judge(order, trials),
        .. _sums.Skip(4),
    ];

    /// <summary>Gets the verdict. What the sums refuse is not tried in the virtual shop first.</summary>
    public Outcome Outcome => Worst(_sums) == Outcome.Fails ? Outcome.Fails : Worst(Sections);

    /// <summary>Gets the parts that must be added.</summary>
    public IEnumerable<string> Additions => Conditions(finding => finding.Outcome == Outcome.Add);

    /// <summary>Gets all else that must be so.</summary>
    public IEnumerable<string> OtherConditions => Conditions(finding => finding.Outcome < Outcome.Add);

    /// <summary>Gets a value indicating whether there are settings that find the tool.</summary>
    public bool HasSettings => trials.Teach(order).Worked;

    /// <summary>Gets the lines to type at the console.</summary>
    public IReadOnlyList<string> Lines => trials.Lines(order);

    private static Outcome Worst(IEnumerable<Section> sections) => sections.Max(section => section.Outcome);

    private IEnumerable<string> Conditions(Func<Finding, bool> isWanted) =>
        (from section in Sections from finding in section.Findings
        where finding.Condition is not null && isWanted(finding)
        select finding.Condition).Distinct();
}
