using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>The board's own time, and many seeds at once.</summary>
[TestClass]
public sealed class BoardPaceTests
{
    private const int Seeds = 10;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Work_takes_time_from_the_readings_and_a_flash_write_stops_them()
    {
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 60, ["run-on 1"], 10, 20);
        day.Pace = Pace.Esp32() with
        {
            Costs = new BoardCosts
            {
                InstructionMicroseconds = 2,
                ConversionMicroseconds = 150,
                ReadingInstructions = 40,
                ClosingInstructions = 600,
                IdleInstructions = 200,
            },
        };
        DayRun run = new DayRun(day, 1, isTraced: true).Run();
        int readings = run.Rig.Switch.Readings.ASecond;
        int gap = run.Rig.Switch.Readings.WorstGapMicroseconds;

        // 230 µs each and nothing else would be 4,300 a second; 1.6 ms of each 2.5 ms is work.
        TestContext.WriteLine($"{readings} readings a second, longest gap {gap / 1000.0:0.0} ms");
        Assert.IsInRange(1000, 2200, readings);
        Assert.IsInRange(80_000, 700_000, gap);
        Assert.AreEqual(1, run.Judge.Starts);
    }

    [TestMethod]
    public void Costs_of_nothing_leave_only_the_conversion()
    {
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 20, [], 5, 10);
        day.Pace = Pace.Esp32() with
        {
            Costs = new BoardCosts
            {
                InstructionMicroseconds = 0,
                ConversionMicroseconds = 150,
                LeastFlashMilliseconds = 0,
                MostFlashMilliseconds = 0,
                CollectionChance = 0,
            },
        };
        DayRun run = new DayRun(day, 1, isTraced: false).Run();

        // 6,667 a second, less what does not fit at a bucket's end.
        Assert.IsInRange(6000, 6900, run.Rig.Switch.Readings.ASecond);
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False);
    }

    [TestMethod]
    public void The_person_does_not_wait_for_a_board_that_is_busy()
    {
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 60, [], 10, 20);
        List<Entry> timeline = [];
        VirtualShop shop = ShopBuilder.Build(day, 1);
        ShopLine line = new(shop, new Person(day, 1, shop, timeline));
        line.Advance(60_000_000);

        Assert.AreEqual(10.0, timeline[0].Time / 1e6, 0.1);
        Assert.AreEqual(20.0, timeline[1].Time / 1e6, 0.1);
    }

    [TestMethod]
    public void Many_seeds_at_once_come_to_the_same_sums_as_one_after_another()
    {
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 30, [], 3, 10, 15, 20);
        SeriesSums one = new();
        for (int seed = 5; seed < 5 + Seeds; seed++)
        {
            one.Add(new DayRun(day, seed, isTraced: false).Run());
        }

        int count = 0;
        SeriesSums all = DaySeries.Sum(day, 5, Seeds, () => Interlocked.Increment(ref count));

        Assert.AreEqual(Seeds, count);
        Assert.AreEqual(one.ToString(), all.ToString());
        Assert.AreEqual(2 * Seeds, all.Starts);
    }
}
