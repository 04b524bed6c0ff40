using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class RegressionTests
{
    [TestMethod]
    public void AConverterThatThrowsOnceDoesNotMatter()
    {
        SwitchBench bench = new SwitchBench();
        bench.Tool(SwitchBench.Saw, 2000);
        bench.Board.BurstsThatThrow = 1;
        Assert.AreEqual(400, bench.TogglesIn(400));
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
    }

    [TestMethod]
    [DataRow(0)]
    [DataRow(1000)]
    public void AutoAfterTheLongestRunGivesNoPulse(int delay)
    {
        CoreBench bench = CoreBench.Ready(CoreBench.Settings(startDelay: delay, longestRun: 5000));
        bench.Run(3000, 8000);
        int closings = bench.Closings;
        bench.Do(VacuumEvent.Auto);
        bench.Run(3000, 3000);

        // Either it follows again, or it stays off; a contact closed for one bucket is neither.
        Assert.IsTrue(bench.Core.IsRelayClosed || bench.Closings == closings);
    }

    [TestMethod]
    [DataRow(990)]
    [DataRow(970)]
    [DataRow(975)]
    public void ASurgeThatFallsByMoreThanATwelfthIsWaitedFor(int thousandthsLeft)
    {
        CoreBench bench = CoreBench.Ready(CoreBench.AfterSurge());
        int current = 25000;
        while (!bench.Core.IsRelayClosed && current > 700)
        {
            bench.Run(current, 20);
            current = current * thousandthsLeft / 1000;
        }

        // 4 % in 80 ms is over at once; 11 % and 9.6 % are not.
        bool isFlat = thousandthsLeft == 990;
        Assert.AreEqual(isFlat, bench.ClosedAt - bench.ToolStartedAt <= 185000);
    }

    [TestMethod]
    public void WatchGoesOnWhenTheLineEndsWithReturnAndLineFeed()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.Type("watch\r\n");
        bench.Run(500);
        Assert.IsTrue(bench.Switch.Console.Watch.IsOn);
    }

    [TestMethod]
    public void AnArrowKeyEndsWatchAndLeavesNothingBehind()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.Type("watch\r");
        bench.Run(500);
        bench.Board.Type("\u001b[A");
        bench.Run(200);
        Assert.AreEqual("told off: 0.00 A, starts at 0.60 A", bench.Answer("why"));
    }

    [TestMethod]
    public void ManyLinesInOnePieceLoseNothingOfTheirAnswers()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.Type("start-delay\rstart-delay\rstart-delay\rstart-delay\r");
        bench.Board.Type("start-delay\rstart-delay\rstart-delay\rstart-delay\r");
        bench.Run(2000);
        Assert.AreEqual(0, bench.Switch.Console.Output.Dropped);
    }

    [TestMethod]
    public void TenSecondsWithoutReadingsAreNotTenSecondsOfGoodReadings()
    {
        CoreBench bench = CoreBench.Ready();
        bench.Stand(0, 200);
        bench.Gap(10500);
        bench.Run(3000, 1000);
        Assert.IsFalse(bench.Core.IsRelayClosed);
    }

    [TestMethod]
    public void AConverterThatFailsForADayStaysFailed()
    {
        FaultMonitor monitor = new FaultMonitor(new NoticeQueue(), 0);
        Bucket bucket = new Bucket();
        bucket.Failed = 64;
        for (int i = 0; i < 24 * 3600 * Bucket.ASecond; i++)
        {
            bucket.EndTime += Bucket.Microseconds;
            monitor.Accept(bucket, false, false);
        }

        Assert.IsTrue(monitor[Fault.ConverterFails].IsActive);
    }

    [TestMethod]
    public void AClearDoesNotHideThatTheToolRanTooLong()
    {
        CoreBench bench = CoreBench.Ready(CoreBench.Settings(longestRun: 5000));
        bench.Run(3000, 8000);
        bench.Core.Faults.Clear(bench.Now);
        bench.Run(3000, 1000);
        Assert.AreEqual("until-stop", Words.Of(bench.Core.Vacuum.State));
        Assert.IsTrue(bench.IsFaulted(Fault.RanTooLong));
    }
}
