using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>Short days of one kind of tool each, through the whole firmware with its defaults.</summary>
[TestClass]
public sealed class ShortDayTests
{
    [TestMethod]
    [DataRow(ToolKind.Induction, 11.0)]
    [DataRow(ToolKind.Universal, 6.0)]
    [DataRow(ToolKind.SoftStart, 8.0)]
    [DataRow(ToolKind.PhaseChopped, 2.0)]
    [DataRow(ToolKind.HalfWave, 4.0)]
    [DataRow(ToolKind.Rectified, 2.0)]
    public void Every_kind_of_tool_starts_the_vacuum(ToolKind kind, double amperes)
    {
        foreach (SensorKind sensor in new[] { SensorKind.Transformer, SensorKind.Hall })
        {
            Day day = ShortDay.Of(ShortDay.Tool(kind, amperes), 60, [], 3, 20, 30, 45);
            day.Shop.Sensor = sensor;
            if (sensor == SensorKind.Hall)
            {
                day.Settings = ["sensor-gain 50"];
            }

            DayRun run = new DayRun(day, 3, isTraced: false).Run();
            Assert.AreEqual(2, run.Judge.Starts, $"{kind} {sensor}");
            Assert.AreEqual(0, run.Judge.Missed + run.Judge.False + run.Faults, $"{kind} {sensor}");
        }
    }

    [TestMethod]
    public void A_lamp_on_the_tools_line_does_not_start_the_vacuum()
    {
        DayRun run = new DayRun(ShortDay.Of(ShortDay.Tool(ToolKind.Lamp, 0.3), 60, [], 3, 20, 30, 45), 3, isTraced: false).Run();

        Assert.AreEqual(0, run.Judge.Starts + run.Judge.Missed + run.Judge.False);
        Assert.AreEqual(0.0, run.VacuumMinutes);
    }

    [TestMethod]
    public void Six_short_cuts_in_a_minute_stretch_the_run_on_and_delay_no_restart()
    {
        double[] cuts = [.. Enumerable.Range(0, 16).Select(i => 2.0 + (i * 4))];
        DayRun run = new DayRun(ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 150, ["run-on 1"], cuts), 5, isTraced: false)
            .Run();

        Assert.AreEqual(8, run.Judge.Starts);
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False);
        Assert.IsTrue(run.Timeline.Exists(entry => entry.Text.Contains("runs for 60 s more", StringComparison.Ordinal)));
    }

    [TestMethod]
    public void A_sensor_pulled_out_while_a_tool_runs_stops_the_vacuum_and_says_so()
    {
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 80, [], 3, 70);
        day.Steps =
            [day.Steps[0], new DayStep(10_000_000, DayAct.SensorOut), new DayStep(20_000_000, DayAct.SensorIn), day.Steps[1]];
        DayRun run = new DayRun(day, 5, isTraced: true).Run();

        Assert.IsTrue(run.Timeline.Exists(entry => entry.Text == "fault comes up: sensor open or shorted"));
        Assert.IsTrue(run.Timeline.Exists(entry => entry.Text == "fault ends: sensor open or shorted"));
        Assert.IsFalse(run.Trace.Exists(point => point.Seconds is > 10.5 and < 20 && point.IsClosed), "on without a sensor");
        Assert.IsTrue(run.Trace.Exists(point => point.Seconds is > 31 and < 69 && point.IsClosed), "the tool still runs");
        Assert.AreEqual(VacuumState.Idle, run.Rig.Switch.Core.Vacuum.State);
    }

    [TestMethod]
    public void The_same_seed_gives_the_same_day_to_the_bit()
    {
        DayRun first = new DayRun(DayFile.Demo(), 11, isTraced: true).Run();
        DayRun second = new DayRun(DayFile.Demo(), 11, isTraced: true).Run();
        DayRun other = new DayRun(DayFile.Demo(), 12, isTraced: true).Run();

        CollectionAssert.AreEqual(first.Trace, second.Trace);
        CollectionAssert.AreNotEqual(first.Trace, other.Trace);
    }
}
