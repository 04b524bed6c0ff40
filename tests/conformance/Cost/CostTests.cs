using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.ConformanceTests.Cost;

[TestClass]
[DoNotParallelize]
public class CostTests
{
    private static readonly DeviceCode s_code = new(isMetered: true);

    private static readonly Lazy<StepCosts[]> s_all = new(() =>
        [
            Stretches.Quiet(s_code, 2000),
            Stretches.Running(s_code, 2000),
            Stretches.Cuts(s_code, 2000),
            Stretches.Clipped(s_code, 2000),
            Stretches.SensorOff(s_code, 2000),
            Stretches.KnownTwoTools(s_code, 2000),
        ]);

    public TestContext TestContext { get; set; } = null!;

    // Shown by: dotnet test tests/conformance --filter CostTests --logger "console;verbosity=detailed"
    [TestMethod]
    public void TheReport() => TestContext.WriteLine(new CostReport(s_code) + Environment.NewLine + new PaceReport(s_code));

    [TestMethod]
    public void AReadingIsCheap()
    {
        Assert.IsLessThanOrEqualTo(CostLimits.Reading, new PaceReport(s_code).PlainReading);

        // Two locked reads of three native calls each.
        var two = new AdapterCost(s_code).TwoReadings;
        Assert.AreEqual(
            new Counts { Instructions = two.Instructions, VirtualCalls = 2, NativeCalls = 6, Locks = 2 }, two);
    }

    // What the switch's own measurement of the board goes by.
    [TestMethod]
    public void TheBoardMeterKnowsItsLoopAndAReading()
    {
        var loop = s_code.Bench<Func<int, int>>("BoardRun", "Loop");
        Meter.Begin(s_code.Methods);
        loop(10);
        var few = Meter.Total.Instructions;
        loop(110);
        Assert.AreEqual(BoardMeter.InstructionsARound * 100, Meter.Total.Instructions - few - few);
        var board = new AdapterCost(s_code);
        var reading = (board.TwoReadings.Weighed + board.Look) / 2.0;
        Assert.AreEqual(BoardMeter.InstructionsAReading, reading, 2);
    }

    [TestMethod]
    [DataRow(1000)]
    [DataRow(2000)]
    public void TheCloseOfABucketIsCheap(int readingsASecond)
    {
        var readings = new ReadingCost(s_code).Mean * readingsASecond / CostReport.BucketsASecond;
        (StepCosts Costs, int Mostly)[] all =
        [
            (Stretches.Quiet(s_code, readingsASecond), CostLimits.CloseMostly),
            (Stretches.Running(s_code, readingsASecond), CostLimits.CloseMostly),
            (Stretches.TwoTools(s_code, readingsASecond), CostLimits.CloseMostly),
            (Stretches.Standing(s_code, readingsASecond), CostLimits.CloseMostlyBusy),
            (Stretches.Cuts(s_code, readingsASecond), CostLimits.CloseMostlyBusy),
            (Stretches.Surge(s_code, readingsASecond), CostLimits.CloseMostlyBusy),
            (Stretches.KnownRunning(s_code, readingsASecond), CostLimits.CloseMostlyBusy),
            (Stretches.KnownTwoTools(s_code, readingsASecond), CostLimits.CloseMostlyBusy),
        ];
        foreach (var (costs, mostly) in all)
        {
            Assert.IsLessThanOrEqualTo(CostLimits.Close, costs.Mean(step => step.Readings.Weighed) - readings, costs.Name);
            Assert.IsLessThanOrEqualTo(
                mostly, costs.Percentile(99, step => step.Readings.Instructions) - readings, costs.Name);
        }
    }

    [TestMethod]
    public void TheCoreIsNeverDear()
    {
        foreach (var costs in s_all.Value)
        {
            Assert.IsLessThanOrEqualTo(CostLimits.CoreRarely, costs.Worst(step => step.Core), costs.Name);
        }
    }

    // The plan's slow corner: 2 µs an instruction, 150 µs a conversion. There the board takes long buckets.
    [TestMethod]
    [DataRow(false, 1000)]
    [DataRow(true, 700)]
    public void AtTheSlowCornerEnoughReadingsAreLeft(bool hasVacuumLine, int must) =>
        Assert.IsGreaterThanOrEqualTo(must, new PaceReport(s_code).ReadingsASecond(2, 150, hasVacuumLine));

    [TestMethod]
    public void NothingIsAllocatedWhileNobodyTypes()
    {
        foreach (var costs in s_all.Value)
        {
            Assert.AreEqual(0, costs.Total.Allocations, costs.Name);

            // When a fault comes up the sounder says so; that loads a literal.
            Assert.IsLessThanOrEqualTo(1, costs.Total.Literals, costs.Name);
        }
    }

    // The literals of a watch's lines are objects on the device; the report shows how many.
    [TestMethod]
    [DataRow("watch")]
    [DataRow("record")]
    public void NothingIsAllocatedWhileAStreamFlows(string word) =>
        Assert.AreEqual(0, Stretches.Streaming(s_code, 2000, word).Total.Allocations);

    // The dearest line is longest, names nothing, and wants all names to be compared.
    [TestMethod]
    public void NoTypedLineIsDear()
    {
        var rig = new MeteredSwitch(s_code, 2000);

        // First the log's write for the next ten minutes: its check value is dear, and comes with the relay open.
        rig.Type("vacuum on\r");
        rig.Run(400);
        rig.Type("vacuum off\r");
        rig.Run(800);
        rig.TakeSent();
        foreach (var line in new[]
        {
            "why", "start-at 0.7", "start-at 99999999", "start-at 999999999.999999 mA", "defaults", "no", "help start-at", "set",
            "calibrate 1", "filter done", "vacuum on", "vacuum auto", "watch", "", "teach", "", "test", "", "record", "",
            "\u001b[A\u001b[B", new string('a', 200), new string('-', 72), new string('=', 71) + "x",
            "start" + new string('-', 67), "starts-a-minut" + new string('-', 58), new string('\b', 100) + "x",
            "stop-below " + new string('9', 61), "run-on 1" + new string(' ', 63) + "s",
        })
        {
            rig.Type(line + "\r");
            var dearest = rig.Run(400).MaxBy(step => step.All.Instructions)!.All;
            TestContext.WriteLine($"{dearest.Instructions,5} instructions, {dearest.Calls} calls: {line}");
            Assert.IsLessThanOrEqualTo(CostLimits.Typed, dearest.Instructions, line);
            rig.TakeSent();
        }
    }
}
