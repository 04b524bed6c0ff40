using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.SystemTests.Matrix;

namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>
/// A place of the load matrix in a box that is wired wrongly: the vacuum's wire runs through the tool's sensor. The tool is used;
/// its user finds that the vacuum goes on, switches it off by hand, and uses the tool again, and once more.
/// </summary>
internal sealed class FeedbackRun
{
    private const double WarmUp = 5;
    private const double Use = MatrixCase.FirstRun;
    private const double Patience = 15;
    private const double LeastVacuum = 2.5;
    private const double MostVacuum = 12;

    private readonly MatrixCase _case;
    private readonly Day _day;
    private readonly VirtualShop _shop;
    private readonly Rig _rig;
    private readonly Person _person;

    private FeedbackRun(MatrixCase of, double[]? course)
    {
        _case = of;
        _day = of.Day(course, WarmUp);
        _day.Shop.IsVacuumThroughToolSensor = true;

        // Shop vacuums at 230 V and at 120 V, turned down and up: common practice, no source.
        VacuumAmperes = LeastVacuum + ((MostVacuum - LeastVacuum) * new Random(of.Seed + 1).NextDouble());
        _day.Shop.VacuumAmperes = VacuumAmperes;
        double turn = Use + of.Brake + Patience + 2;
        _day.Steps =
        [
            .. _day.Steps.Where(step => step.At < (long)((WarmUp + 1) * 1e6) || step.Act is DayAct.Arc or DayAct.Mains),
            .. Enumerable.Range(0, 3).SelectMany(i => Turn(WarmUp + 1 + (i * turn), of.Brake)),
        ];
        Seconds = WarmUp + 1 + (3 * turn);
        _day.Steps = [.. _day.Steps.OrderBy(step => step.At)];
        (_shop, _person, _rig) = ShopRig.Build(_day, of.Seed);
    }

    /// <summary>Gets what the vacuum draws, A rms.</summary>
    public double VacuumAmperes { get; }

    /// <summary>Gets the starts that the tool made, until it was found.</summary>
    public int Starts { get; private set; }

    /// <summary>Gets how often the relay closed, until it was found.</summary>
    public int Closings { get; private set; }

    /// <summary>Gets a value indicating whether it was found.</summary>
    public bool IsFound { get; private set; }

    private double Seconds { get; }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{_case}, vacuum {VacuumAmperes:0.0} A: {Starts} starts, {Closings} closings; probes {string.Join(", ", Probes())}";

    /// <summary>Plays it.</summary>
    /// <param name="of">The case.</param>
    /// <param name="course">Course of the recorded noise, or null.</param>
    /// <returns>What came of it.</returns>
    public static FeedbackRun Play(MatrixCase of, double[]? course) => new FeedbackRun(of, course).Play();

    private IEnumerable<string> Probes()
    {
        EventLog log = _rig.Switch.Log;
        return Enumerable.Range(0, log.Count).Select(log.At).Where(entry => entry.Kind == LogKind.Probed)
            .Select(entry => entry.First == 0 ? "no" : $"{entry.Figure} ms");
    }

    private static DayStep[] Turn(double at, double brake) =>
    [
        Step(at, DayAct.Start),
        Step(at + Use, DayAct.Stop),
        Step(at + Use + brake + Patience, DayAct.Type, "vacuum off"),
    ];

    private static DayStep Step(double seconds, DayAct act, string? text = null) =>
        new((long)(seconds * 1e6), act, text == null ? "tool" : null, Text: text);

    private FeedbackRun Play()
    {
        foreach (string line in _case.Settings)
        {
            StringAssert.Contains(_rig.Ask(line), "saved", StringComparison.Ordinal);
        }

        DetectionCore core = _rig.Switch.Core;
        long end = (long)(Seconds * 1e6);
        while (_rig.Board.ShopTime < end && !IsFound)
        {
            while (_person.Lines.TryDequeue(out string? line))
            {
                _rig.Board.Serial.Type(line + "\r");
            }

            _rig.Step();
            IsFound = core.Faults[Fault.OwnCurrent].IsActive;
        }

        Starts = core.Vacuum.Starts.Total;
        Closings = _shop.Relay.ClosedCount;
        return this;
    }
}
