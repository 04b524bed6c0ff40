using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Soak;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// A board that is too slow for ordinary buckets: it takes long ones, says so, finds the tools that it says it can, and starts
/// nothing by itself.
/// </summary>
[TestClass]
public sealed class SlowBoardTests
{
    public TestContext TestContext { get; set; } = null!;

    // The plan's slow corner, and a board that is twice as slow.
    [TestMethod]
    [DataRow(2.0, 150.0)]
    [DataRow(4.0, 300.0)]
    public void A_slow_board_takes_long_buckets_and_says_so(double instruction, double conversion)
    {
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 60, [], 15, 25, 40, 50);
        day.Pace = Slow(instruction, conversion);
        DayRun run = new DayRun(day, 3, isTraced: false).Run();
        DetectionCore core = run.Rig.Switch.Core;

        TestContext.WriteLine($"{run.Rig.Switch.Readings.ASecond} readings a second");
        Assert.IsTrue(core.HasLongBuckets);
        Assert.IsTrue(core.Faults[Fault.SlowBoard].IsActive);
        Assert.IsTrue(run.Timeline.Exists(entry => entry.Text.Contains("slow board", StringComparison.Ordinal)));
        Assert.AreEqual(2, run.Judge.Starts);
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False);
    }

    [TestMethod]
    public void A_board_of_the_plans_middle_takes_ordinary_ones()
    {
        DayRun run = new DayRun(ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 30, [], 15, 25), 3, isTraced: false);
        Assert.IsFalse(run.Run().Rig.Switch.Core.HasLongBuckets);
    }

    // With two or three readings in a bucket a lamp of 0.5 A may show itself as 0.6 A. Such a board knows no tools, so the
    // compressor that needs no vacuum is left out.
    [TestMethod]
    [DataRow(2.0, 150.0, 0)]
    [DataRow(4.0, 300.0, 6)]
    public void The_demo_day_on_a_slow_board_misses_nothing_and_starts_little_false(
        double instruction, double conversion, int allowedFalse)
    {
        Day day = DayFile.Demo();
        day.Pace = Slow(instruction, conversion);
        day.Memory = [];
        day.Steps = [.. day.Steps.Where(step => step.Tool != "compressor")];
        day.Tools = [.. day.Tools.Where(tool => tool.Name != "compressor")];
        SeriesSums sums = DaySeries.Sum(day, 1, 30, () => { });

        TestContext.WriteLine(sums.ToString());
        Assert.AreEqual(0, sums.Missed + sums.Counts.InSurge, sums.ToString());
        Assert.IsLessThanOrEqualTo(allowedFalse, sums.False, sums.ToString());
    }

    // No soft start: it climbs through the level, and a board with two noisy readings in a bucket sees it there 0.1 A early.
    [TestMethod]
    public void A_tool_is_found_from_the_stated_size_up()
    {
        foreach (ToolKind kind in new[] { ToolKind.Induction, ToolKind.Universal, ToolKind.PhaseChopped, ToolKind.HalfWave })
        {
            foreach (double hertz in new[] { 50.0, 60.0 })
            {
                Day day = ShortDay.Of(ShortDay.Tool(kind, 0.75), 60, [], 15, 25, 40, 50);
                day.Shop.Hertz = hertz;
                day.Pace = Slow(4, 300);
                DayRun run = new DayRun(day, 3, isTraced: false).Run();
                int stated = run.Rig.Switch.Core.StartMilliamperes;
                TestContext.WriteLine($"{kind} {hertz} Hz: states {stated} mA, {run.Judge.Starts} starts");
                Assert.IsLessThan(750, stated);
                Assert.AreEqual(2, run.Judge.Starts, $"{kind} {hertz}");
                Assert.AreEqual(0, run.Judge.Missed + run.Judge.False, $"{kind} {hertz}");
            }
        }
    }

    [TestMethod]
    public void An_evening_of_a_slow_board_has_no_false_start()
    {
        for (int seed = 1; seed <= 2; seed++)
        {
            Day day = Evening.Draw(seed);
            day.Pace = Slow(4, 300);
            DayRun run = new DayRun(day, seed, isTraced: false).Run();
            TestContext.WriteLine($"{run.Judge.Starts} starts, {run.Judge.Missed} missed");
            Assert.AreEqual(0, run.Judge.False);
        }
    }

    private static Pace Slow(double instruction, double conversion) => Pace.Esp32() with
    {
        Costs = new BoardCosts { InstructionMicroseconds = instruction, ConversionMicroseconds = conversion },
    };
}
