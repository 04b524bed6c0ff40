using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;

namespace NanoDustSwitch.SystemTests;

/// <summary>What stands on the line beside the tools, through the whole firmware with its defaults.</summary>
[TestClass]
public sealed class StandingDayTests
{
    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void A_tool_beside_a_lamp_and_hum_is_found_and_the_vacuum_stops_with_the_lamp_left()
    {
        DayRun run = new DayRun(DayFile.Read(Repository.PathOf("tests/system/days/lamp-and-hum.json")), 1, isTraced: true).Run();
        string why = run.Rig.Ask("why");
        TestContext.WriteLine(why);
        Assert.AreEqual(1, run.Judge.Starts);
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False + run.Faults);
        Assert.IsTrue(run.Trace.Exists(point => point.Seconds is > 316 and < 318 && point.IsClosed), "on with the tool");
        Assert.IsFalse(run.Trace.Exists(point => point.Seconds is < 315 or > 368 && point.IsClosed), "on without a tool");
        StringAssert.Contains(why, "stands on the line without a tool: a lamp or charger?", StringComparison.Ordinal);
    }

    // The tool is off, and the vacuum goes on: a lamp cannot be told from a tool that idles.
    [TestMethod]
    public void A_lamp_lit_during_the_run_is_named()
    {
        Day day = ShortDay.Of(ShortDay.Tool(Simulator.Shop.ToolKind.Universal, 3), 60, [], 5, 20);
        day.Tools =
        [
            .. day.Tools,
            new() { Name = "lamp", Kind = Simulator.Shop.ToolKind.Lamp, RatedAmperes = 0.5, InrushMultiple = 1 },
        ];
        day.Steps = [day.Steps[0], new DayStep(10_000_000, DayAct.Start, "lamp"), day.Steps[1]];
        DayRun run = new DayRun(day, 2, isTraced: true).Run();
        string why = run.Rig.Ask("why");
        TestContext.WriteLine(why);
        Assert.AreEqual(VacuumState.On, run.Rig.Switch.Core.Vacuum.State);
        StringAssert.Contains(why, "a lamp or charger switched on during the run?", StringComparison.Ordinal);
    }

    [TestMethod]
    [DataRow("generator")]
    [DataRow("wild-readings")]
    public void Neither_a_generator_nor_wild_readings_start_the_vacuum(string name)
    {
        DayRun run = new DayRun(DayFile.Read(Repository.PathOf($"tests/system/days/{name}.json")), 1, isTraced: true).Run();
        foreach (TracePoint point in run.Trace.Where(point => point.IsClosed).Take(1))
        {
            TestContext.WriteLine($"first on at {point.Seconds:0.00} s");
        }

        TestContext.WriteLine($"missed {run.Judge.Missed}, false {run.Judge.False}, faults {run.Faults}");
        Assert.AreEqual(1, run.Judge.Starts);
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False + run.Faults);
    }
}
