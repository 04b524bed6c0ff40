using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Soak;

namespace NanoDustSwitch.SystemTests;

/// <summary>A board that pauses for longer than the driver bridges, and what the judge of a day says of it.</summary>
[TestClass]
public sealed class PauseTests
{
    [TestMethod]
    [DataRow(20, 140, 0)]
    [DataRow(160, 160, 4)]
    [DataRow(160, 400, 4)]
    public void A_day_with_pauses_is_right(double least, double most, int leastLost)
    {
        DayRun run = Paused(least, most, 8, "why");
        Assert.AreEqual(1, run.Judge.Starts);
        Assert.IsEmpty(run.Result.Verdicts);
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False + run.Faults);

        // Some fall into a look for the vacuum's own current, with the relay open.
        Assert.IsInRange(leastLost, 2 * leastLost, run.Rig.Switch.Core.LostHeartbeats.Total);
        Assert.IsTrue(run.Rig.Switch.Core.IsRelayClosed);
    }

    [TestMethod]
    public void The_eleventh_pause_of_an_hour_is_a_fault()
    {
        DayRun run = Paused(160, 400, 40, "why");
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False);
        Assert.AreEqual(DetectionCore.MostLostAnHour + 1, run.Rig.Switch.Core.LostHeartbeats.Total);
        Assert.IsTrue(run.Rig.Switch.Core.Faults[Fault.HeartbeatLost].IsLatched);
        Assert.IsFalse(run.Rig.Switch.Core.IsRelayClosed);
    }

    // A tool that starts while the board pauses is seen late, and that is no miss.
    [TestMethod]
    public void A_start_within_a_pause_is_judged_from_its_end()
    {
        Day day = Day(400, 400, [2.95, 3, 3.05, 3.1]);
        day.Seconds = 20;
        day.Settings = [.. day.Settings, "start-delay 0"];
        for (int seed = 0; seed < 8; seed++)
        {
            DayRun run = new DayRun(day, seed, isTraced: false).Run();
            Assert.AreEqual(1, run.Judge.Starts, $"seed {seed}");
            Assert.AreEqual(0, run.Judge.Missed + run.Judge.False, $"seed {seed}");
        }
    }

    // The setting is 0.5 s, and the core has another value: the judge must find both.
    [TestMethod]
    [DataRow(100, "FALSE: the relay rested for ")]
    [DataRow(10_000, "MISSED: the vacuum went off while the tool ran, and did not come back")]
    public void A_relay_that_does_not_rest_or_does_not_come_back_is_found(int gap, string verdict)
    {
        DayRun run = new(Day(160, 160, [10]), 7, isTraced: false);
        CoreSettings settings = run.Rig.Switch.Settings.ToCore();
        settings.RestartGapMilliseconds = gap;
        run.Rig.Switch.Core.Use(settings);
        run.Run();
        Assert.IsTrue(run.Result.Verdicts.Any(entry => entry.Text.StartsWith(verdict, StringComparison.Ordinal)));
        Assert.IsFalse(run.IsGood);
    }

    [TestMethod]
    public void Evenings_lose_the_heartbeat_now_and_then()
    {
        int lost = Enumerable.Range(1, 2).Sum(seed =>
            new DayRun(Evening.Draw(seed), seed, isTraced: false).Run().Rig.Switch.Core.LostHeartbeats.Total);
        Assert.IsInRange(1, 30, lost);
    }

    private static DayRun Paused(double least, double most, int lines, string line) =>
        new DayRun(Day(least, most, [.. Enumerable.Range(0, lines).Select(i => 10 + (i * 3.0))], line), 7, isTraced: false).Run();

    private static Day Day(double least, double most, double[] typed, string line = "why")
    {
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 150, [], 3);
        day.Steps = [.. day.Steps.Concat(typed.Select(at => new DayStep((long)(at * 1e6), DayAct.Type, Text: line)))
            .OrderBy(step => step.At)];
        day.Pace = Pace.Esp32() with
        {
            Costs = new BoardCosts
            {
                CollectionChance = 1,
                LeastCollectionMilliseconds = least,
                MostCollectionMilliseconds = most,
            },
        };
        return day;
    }
}
