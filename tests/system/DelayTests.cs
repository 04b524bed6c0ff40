using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>With no start delay the relay is commanded within two cycles of the current, for tools of 1 A and more.</summary>
[TestClass]
public sealed class DelayTests
{
    private const int Starts = 30;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(ToolKind.Lamp, 1.0, 60.0, 2000.0, 0.0)]
    [DataRow(ToolKind.Lamp, 1.0, 50.0, 1000.0, 0.6)]
    [DataRow(ToolKind.Lamp, 5.0, 60.0, 2000.0, 0.0)]
    [DataRow(ToolKind.Corrected, 2.0, 60.0, 1000.0, 0.6)]
    [DataRow(ToolKind.Induction, 1.0, 60.0, 2000.0, 0.0)]
    [DataRow(ToolKind.Induction, 1.0, 50.0, 2000.0, 0.0)]
    [DataRow(ToolKind.Induction, 1.0, 60.0, 1000.0, 0.6)]
    [DataRow(ToolKind.Induction, 1.0, 50.0, 1000.0, 0.6)]
    [DataRow(ToolKind.Universal, 1.0, 60.0, 1000.0, 0.6)]
    [DataRow(ToolKind.Universal, 5.0, 60.0, 2000.0, 0.0)]
    [DataRow(ToolKind.PhaseChopped, 2.0, 60.0, 1000.0, 0.6)]
    [DataRow(ToolKind.HalfWave, 2.0, 60.0, 1000.0, 0.6)]
    [DataRow(ToolKind.HalfWave, 2.0, 50.0, 2000.0, 0.0)]
    [DataRow(ToolKind.Rectified, 2.0, 60.0, 1000.0, 0.6)]
    [DataRow(ToolKind.Induction, 12.0, 60.0, 2000.0, 0.0)]
    public void Commanded_within_two_cycles(ToolKind kind, double amperes, double hertz, double rate, double jitter) =>
        Check(kind, amperes, hertz, rate, jitter, []);

    [TestMethod]
    [DataRow(ToolKind.PhaseChopped, 60.0, 2000.0, 0.0)]
    [DataRow(ToolKind.PhaseChopped, 60.0, 1000.0, 0.6)]
    [DataRow(ToolKind.HalfWave, 60.0, 2000.0, 0.0)]
    [DataRow(ToolKind.HalfWave, 50.0, 1000.0, 0.6)]
    [DataRow(ToolKind.Rectified, 60.0, 2000.0, 0.0)]
    [DataRow(ToolKind.Rectified, 60.0, 1000.0, 0.6)]
    [DataRow(ToolKind.Rectified, 50.0, 2000.0, 0.0)]
    public void At_one_ampere_too_with_the_level_that_teach_would_set(ToolKind kind, double hertz, double rate, double jitter) =>
        Check(kind, 1, hertz, rate, jitter, ["stop-below 0.16", "start-at 0.26"]);

    private void Check(ToolKind kind, double amperes, double hertz, double rate, double jitter, string[] levels)
    {
        List<double> times = [];
        for (int i = 0; i < Starts; i++)
        {
            times.Add(1 + (i * 4));
            times.Add(3 + (i * 4));
        }

        ToolSpecification tool = ShortDay.Tool(kind, amperes);

        // Without a surge it is hardest; but no motor on the bare mains is without one.
        tool.InrushMultiple = kind is ToolKind.Induction or ToolKind.Universal ? null : 1;
        tool.StageSeconds = 0;
        tool.SoftStartSeconds = 0;
        Day day = ShortDay.Of(tool, 4 * Starts, ["start-delay 0", "run-on 0.5", "starts-a-minute 30", .. levels], [.. times]);
        day.Shop.Hertz = hertz;
        day.Pace = new Pace(rate, jitter);
        DayRun run = new DayRun(day, 7, isTraced: false).Run();

        double worstCycles = run.Judge.Delays.Max() / (1000 / hertz);
        TestContext.WriteLine(
            $"{kind} {amperes} A: median {DayReport.Median(run.Judge.Delays):0.0} ms, worst {worstCycles:0.00} cycles");
        Assert.AreEqual(Starts, run.Judge.Starts);
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False);
        Assert.HasCount(Starts, run.Judge.Delays);
        Assert.IsLessThanOrEqualTo(2.0, worstCycles);
    }
}
