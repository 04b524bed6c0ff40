using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Changes;

/// <summary>The verdict on an order, its conditions, and what would make it fit.</summary>
internal sealed class Advice
{
    private readonly Judgement? _largestTool;

    /// <summary>Judges, and looks for changes where it does not fit, or not without an addition.</summary>
    /// <param name="judgement">The order, judged.</param>
    /// <param name="trials">The trials.</param>
    public Advice(Judgement judgement, TrialBook trials)
    {
        Judgement = judgement;
        Outcome = judgement.Outcome;
        ChangeSearch search = new(judgement.Order, trials);
        if (Outcome == Outcome.Add)
        {
            Changes = search.FindWithoutAddition();
        }
        else if (Outcome == Outcome.Fails)
        {
            Changes = search.Find();
            LargestVacuum = search.LargestVacuum();
            _largestTool = search.LargestTool();
        }
    }

    /// <summary>Gets the judgement.</summary>
    public Judgement Judgement { get; }

    /// <summary>Gets what came of it.</summary>
    public Outcome Outcome { get; }

    /// <summary>Gets a value indicating whether it fits as given, with nothing added.</summary>
    public bool Fits => Outcome < Outcome.Add;

    /// <summary>Gets the sets of changes, any of which suffices.</summary>
    public IReadOnlyList<Offer> Changes { get; } = [];

    /// <summary>Gets the largest vacuum with which it fits as it is; null where there is none.</summary>
    public Judgement? LargestVacuum { get; }

    /// <summary>Gets the verdict, and below it what it says: additions, conditions, or changes.</summary>
    public IEnumerable<(string Heading, IReadOnlyList<string> Lines)> Verdict
    {
        get
        {
            string[] conditions = [.. Judgement.OtherConditions.Concat(Minded)];
            if (Outcome == Outcome.Fails)
            {
                yield return ("Does not fit as given.", []);
            }
            else if (Outcome == Outcome.Add)
            {
                yield return ("Fits if you add:", [.. Judgement.Additions]);
                yield return ("and on these conditions:", conditions);
            }
            else
            {
                yield return ("Fits, on these conditions:", conditions);
            }

            string[] lines = [.. Lines];
            if (Outcome == Outcome.Fails || lines.Length > 0)
            {
                yield return (Heading(lines.Length > 0), lines);
            }
        }
    }

    private IEnumerable<string> Minded
    {
        get
        {
            string[] marked = [.. Judgement.Sections.SelectMany(section => section.Findings)
                .Where(finding => finding.Outcome == Outcome.Mind && finding.Condition is null)
                .Select(finding => finding.What)];
            return marked.Length == 0 ? [] : [$"what is marked 'mind' is minded: {string.Join("; ", marked)}"];
        }
    }

    private IEnumerable<string> Lines
    {
        get
        {
            foreach (Offer offer in Changes)
            {
                yield return offer.Text;
            }

            if (LargestVacuum is { } vacuum)
            {
                string amperes = vacuum.Order.Vacuum.Nameplate;
                yield return $"as it is, a vacuum of {amperes} at most: --vacuum {Typed(amperes)}" + With(vacuum);
            }

            if (_largestTool is { } tool)
            {
                string amperes = tool.Order.Tool.Nameplate;
                yield return $"the amperes of the tool's nameplate in place of the table's for {Judgement.Order.Tool.Nameplate}, "
                    + $"if they are {amperes} or less: --tool {Typed(amperes)}/{ToolKinds.NameOf(tool.Order.Tool.Kind)}"
                    + With(tool);
            }
        }
    }

    private static string Typed(string amperes) => amperes.Replace(" ", "");

    private static string With(Judgement judgement) => Offer.With([.. judgement.Additions]);

    private string Heading(bool hasLines) =>
        Outcome == Outcome.Add ? "Without adding anything it would fit, all else as given, with any one of:"
        : hasLines ? "It would fit, all else as given, with any one of:"
        : Judgement.Sections.Where(section => section.Outcome == Outcome.Fails).All(section => section.Title == TeachJudge.Title)
            ? "The tool is too small for the switch, with ten turns as well; work the vacuum by hand."
        : "No three changes that this program knows make it fit; ask a licensed electrician.";
}
