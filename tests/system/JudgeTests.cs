using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>What the judge of a day finds, each with a core made wrong on purpose, and what it must leave alone.</summary>
[TestClass]
public sealed class JudgeTests
{
    [TestMethod]
    [DataRow(true)]
    [DataRow(false)]
    public void A_start_inside_the_surge(bool isSpoiled)
    {
        ToolSpecification saw = ShortDay.Tool(ToolKind.Universal, 6);
        saw.InrushMultiple = 5;
        saw.InrushSeconds = 0.4;
        DayRun run = Run(Day(saw, 20, 3, 10), isSpoiled, core => core.StartDelayMilliseconds = 0);
        Assert.AreEqual(isSpoiled ? 1 : 0, run.Judge.InSurge);
        Assert.AreEqual(!isSpoiled, run.IsGood);
    }

    // A fixed delay is what the person wants, inside the surge or not.
    [TestMethod]
    public void A_fixed_delay_is_not_judged_by_the_surge()
    {
        Day day = Day(ShortDay.Tool(ToolKind.Induction, 6), 20, 3, 10);
        day.Settings = ["start-delay 0"];
        Assert.AreEqual(0, Run(day).Judge.InSurge);
    }

    // Its pulses beat with the board's readings, and seem to fall for a second and more.
    [TestMethod]
    public void Narrow_pulses_are_waited_for()
    {
        ToolSpecification tool = ShortDay.Tool(ToolKind.Rectified, 11.1);
        Day day = Day(tool, 200, [.. Enumerable.Range(0, 40).Select(i => 4.9 * (i + 1))]);
        day.Shop.Hertz = 50.041;
        day.Pace = Pace.Esp32();
        DayRun run = Run(day);
        Assert.IsTrue(run.IsGood, string.Join(", ", run.Result.Verdicts));
        Assert.AreEqual(20, run.Judge.Starts);
    }

    [TestMethod]
    [DataRow(5_000, 0)]
    [DataRow(6_000, 0)]
    [DataRow(9_000, 1)]
    [DataRow(600_000, 1)]
    public void A_vacuum_that_runs_on_for_too_long(int runOn, int stayed)
    {
        DayRun run = Run(Day(Tool(), 40, 3, 10), true, core => core.RunOnMilliseconds = runOn);
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False);
        Assert.AreEqual(stayed, run.Judge.Stayed);
        Assert.AreEqual(stayed == 0, run.IsGood);
    }

    [TestMethod]
    [DataRow("run-on 20")]
    [DataRow("vacuum on")]
    public void What_the_person_asks_for_in_the_day_is_right(string line)
    {
        Day day = Day(Tool(), 60, 3, 10);
        day.Steps = [.. day.Steps.Append(new DayStep(5_000_000, DayAct.Type, Text: line)).OrderBy(step => step.At)];
        DayRun run = Run(day);
        Assert.IsTrue(run.IsGood, string.Join(", ", run.Result.Verdicts));
        Assert.IsGreaterThan(0.4, run.VacuumMinutes);
    }

    // A tool of 0.21 A is nothing at first, and a start once it is taught.
    [TestMethod]
    public void Levels_that_are_typed_in_the_day_are_judged_by()
    {
        ToolSpecification lamp = ShortDay.Tool(ToolKind.Lamp, 0.21);
        lamp.InrushMultiple = 1;
        Day day = Day(lamp, 60, 3, 10, 30, 40);
        day.NoiseAmperes = 0.02;
        day.Steps =
        [
            .. day.Steps.Append(new DayStep(15_000_000, DayAct.Type, Text: "stop-below 0.1"))
                .Append(new DayStep(16_000_000, DayAct.Type, Text: "start-at 0.15")).OrderBy(step => step.At),
        ];
        DayRun run = Run(day);
        Assert.AreEqual(1, run.Judge.Starts, string.Join(", ", run.Result.Verdicts));
        Assert.IsTrue(run.IsGood, string.Join(", ", run.Result.Verdicts));
    }

    [TestMethod]
    public void A_fault_that_nothing_explains()
    {
        DayRun run = new(Day(Tool(), 20, 3, 10), 1, isTraced: false);
        run.Rig.Switch.Core.Faults.See(Fault.OwnCurrent, 0, run.Rig.Switch.Now);
        run.Run();
        Assert.AreEqual(1, run.Judge.Unexpected);

        // And what it keeps off is missed.
        Assert.AreEqual(1, run.Judge.Missed);
        Assert.IsFalse(run.IsGood);
    }

    [TestMethod]
    public void A_fault_that_the_day_explains()
    {
        Day day = Day(Tool(), 40, 12, 18);
        day.Steps =
        [
            new DayStep(3_000_000, DayAct.SensorOut), .. day.Steps, new DayStep(25_000_000, DayAct.SensorIn),
        ];
        DayRun run = Run(day);
        Assert.IsGreaterThan(0, run.Faults);
        Assert.IsTrue(run.IsGood, string.Join(", ", run.Result.Verdicts));
        Assert.AreEqual(0, run.Judge.Starts);
    }

    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void A_start_that_is_held_off(bool isByHand)
    {
        Day day = Day(Tool(), 20, 8, 15);
        if (isByHand)
        {
            day.Steps = [new DayStep(2_000_000, DayAct.Type, Text: "hold"), .. day.Steps];
        }

        DayRun run = new(day, 1, isTraced: false);
        if (!isByHand)
        {
            run.Rig.Switch.Core.Handle(VacuumEvent.Hold, run.Rig.Switch.Now);
        }

        run.Run();
        Assert.AreEqual(isByHand ? 0 : 1, run.Judge.Missed);
        Assert.AreEqual(isByHand, run.IsGood);
    }

    // A core without any wait takes every wild reading for a tool.
    [TestMethod]
    public void Starts_by_wild_readings_are_counted_apart()
    {
        Day day = Day(Tool(), 90);
        day.Steps = [new DayStep(5_000_000, DayAct.Wild, Value: 50, Seconds: 60)];
        DayRun run = Run(day, true, core => core.StartDelayMilliseconds = 0);
        Assert.IsGreaterThan(0, run.Judge.Wild);
        Assert.AreEqual(1, run.Judge.WildTimes);
        Assert.AreEqual(0, run.Judge.False);
    }

    // More than a circuit carries is a surge until 3 s are over, also while a soft start climbs to it. Of less a command after
    // 2.9 s is late.
    [TestMethod]
    [DataRow(21, 0)]
    [DataRow(12, 1)]
    public void A_soft_start_to_more_than_a_circuit_carries_is_no_surge_that_is_over(double amperes, int missed)
    {
        ToolSpecification tool = ShortDay.Tool(ToolKind.SoftStart, amperes);
        tool.SoftStartSeconds = 0.9;
        DayRun run = Run(Day(tool, 20, 3, 10), true, core => core.StartDelayMilliseconds = 2900);
        Assert.AreEqual(missed, run.Judge.Missed, string.Join(", ", run.Result.Verdicts));
    }

    [TestMethod]
    public void Sparks_in_a_run_on_begin_it_anew()
    {
        Day day = Day(Tool(), 40, 3, 10);
        day.Steps = [.. day.Steps, new DayStep(14_500_000, DayAct.Arc, Seconds: 0.1), new DayStep(14_600_000, DayAct.ArcEnds)];
        DayRun run = Run(day);
        Assert.IsTrue(run.IsGood, string.Join(", ", run.Result.Verdicts));
        Assert.IsGreaterThan(15.0 / 60, run.VacuumMinutes);
    }

    // Neither the lamp nor the vacuum's share alone is above stop-below.
    [TestMethod]
    public void A_share_of_the_vacuum_beside_a_lamp_is_to_be_found_in_time()
    {
        Day day = Day(Tool(), 120, 5, 12, 50, 60);
        day.Crosstalk = 0.014;
        day.NoiseAmperes = 0.03;
        day.Settings = ["stop-below 0.25", "start-at 0.4"];
        day.Tools = [.. day.Tools, new() { Name = "lamp", Kind = ToolKind.Lamp, RatedAmperes = 0.17, InrushMultiple = 1 }];
        day.Steps = [.. day.Steps.Append(new DayStep(30_000_000, DayAct.Start, "lamp")).OrderBy(step => step.At)];
        DayRun run = Run(day);
        Assert.IsGreaterThan(0, run.Judge.Looks);
        Assert.IsTrue(run.IsGood, string.Join(", ", run.Result.Verdicts));
    }

    [TestMethod]
    public void Looks_are_counted()
    {
        Day day = Day(Tool(), 60, 3, 10);
        day.Crosstalk = 0.2;
        DayRun run = Run(day);
        EventLog log = run.Rig.Switch.Log;
        Assert.IsGreaterThanOrEqualTo(3, run.Judge.Looks);
        Assert.AreEqual(
            Enumerable.Range(0, log.Count).Count(i => log.At(i).Kind == LogKind.Probed), run.Judge.Looks);
        Assert.AreEqual(1, run.Faults);
        Assert.IsTrue(run.IsGood, string.Join(", ", run.Result.Verdicts));
    }

    [TestMethod]
    public void All_of_them_are_printed_and_spoil_a_series()
    {
        SeriesSums sums = new();
        sums.Add([Result(new DayCounts(100, 0, 0, 2, 0, 0, 7, 2, 9))]);
        Assert.IsTrue(sums.IsGood);
        StringAssert.Contains(
            sums.ToString(),
            "100 starts, 0 missed, 0 false, 2 in the surge, 0 would not stop, 4 faults, 0 of them unexpected, "
                + "7 looks, 2 starts in 9 times of wild readings");
        DayCounts[] wrong =
        [
            new(0, 1, 0, 0, 0, 0, 0), new(0, 0, 1, 0, 0, 0, 0), new(0, 0, 0, 1, 0, 0, 0), new(0, 0, 0, 0, 1, 0, 0),
            new(0, 0, 0, 0, 0, 1, 0), new(0, 0, 0, 0, 0, 0, 0, 3, 9),
        ];
        foreach (DayCounts one in wrong)
        {
            SeriesSums bad = new();
            bad.Add([Result(one), Result(new DayCounts(40, 0, 0, 0, 0, 0, 0))]);
            Assert.IsFalse(bad.IsGood, one.ToString());
            StringAssert.Contains(bad.ToString(), "1 seeds in which something is wrong: 9");
        }
    }

    private static DayResult Result(DayCounts counts) => new(9, 3600, counts, 4, 0, [], []);

    private static ToolSpecification Tool()
    {
        ToolSpecification tool = ShortDay.Tool(ToolKind.SoftStart, 6);
        tool.SoftStartSeconds = 0.5;
        return tool;
    }

    private static Day Day(ToolSpecification tool, double seconds, params double[] steps) =>
        ShortDay.Of(tool, seconds, [], steps);

    private static DayRun Run(Day day, bool isSpoiled = false, Action<CoreSettings>? spoil = null)
    {
        DayRun run = new(day, 1, isTraced: false);
        if (isSpoiled)
        {
            CoreSettings settings = run.Rig.Switch.Settings.ToCore();
            spoil!(settings);
            run.Rig.Switch.Core.Use(settings);
        }

        return run.Run();
    }
}
