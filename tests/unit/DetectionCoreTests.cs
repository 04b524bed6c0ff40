using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class DetectionCoreTests
{
    private const int Idle = 0;
    private const int Tool = 3000;

    // A lamp stands on the line, on a board that takes long buckets or not: it does not keep the vacuum on after a tool.
    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void WhatStoodOnTheLineBeforeAToolIsNoTool(bool isSlow)
    {
        CoreBench bench = CoreBench.Ready();
        if (isSlow)
        {
            bench.UseLongBuckets();
        }

        bench.Run(500, 60000);
        Assert.IsFalse(bench.Core.IsToolRunning);
        bench.Run(1500, 3000);
        Assert.IsTrue(bench.Core.IsToolRunning);
        bench.Run(500, 2500);
        Assert.IsFalse(bench.Core.IsToolRunning);
    }

    // The settings are changed while a fixed delay of 10 s is waited for, when no surge is watched any more.
    [TestMethod]
    public void AStartDelayThatIsChangedDuringAStartLetsThatStartAndTheNextOneThrough()
    {
        CoreSettings settings = CoreBench.AfterSurge();
        settings.StartDelayMilliseconds = 10000;
        CoreBench bench = new CoreBench(settings);
        bench.Run(Idle, 5000);
        bench.Run(Tool, 5000);
        Assert.AreEqual("starting", Words.Of(bench.Core.Vacuum.State));
        bench.Core.Use(CoreBench.AfterSurge());
        bench.Run(Tool, 1000);
        Assert.AreEqual("on", Words.Of(bench.Core.Vacuum.State));
        bench.Run(Idle, 10000);
        Assert.AreEqual("idle", Words.Of(bench.Core.Vacuum.State));
        bench.Run(Tool, 3500);
        Assert.AreEqual("on", Words.Of(bench.Core.Vacuum.State));
    }

    [TestMethod]
    public void ATypicalCut()
    {
        CoreBench bench = new CoreBench(CoreBench.AfterSurge());
        bench.Run(Idle, 5000);
        Assert.AreEqual("idle", Words.Of(bench.Core.Vacuum.State));
        bench.Run(Tool, 1000);
        Assert.AreEqual("on", Words.Of(bench.Core.Vacuum.State));
        bench.Run(Idle, 1000);
        Assert.AreEqual("run-on", Words.Of(bench.Core.Vacuum.State));
        Assert.IsTrue(bench.Core.IsRelayClosed);
        bench.Run(Idle, 5000);
        Assert.AreEqual("idle", Words.Of(bench.Core.Vacuum.State));
        Assert.IsFalse(bench.Core.IsRelayClosed);
        Assert.AreEqual(1, bench.Closings);
    }

    [TestMethod]
    public void PowerUpWithTheToolRunningIsAnOrdinaryStart()
    {
        CoreBench bench = new CoreBench(CoreBench.Settings(startDelay: 1000));
        bench.Run(Tool, 5000);
        Assert.AreEqual(1, bench.Closings);
        Assert.AreEqual(1000000L, bench.ClosedAt - bench.ToolStartedAt);
    }

    [TestMethod]
    public void CurrentsAreShownInMilliamperes()
    {
        CoreBench bench = new CoreBench(CoreBench.Settings());
        bench.Run(Tool, 1000);
        Near.Check(3000, bench.Core.Milliamperes, 45);
        Near.Check(3000, bench.Core.SwingMilliamperes, 170);
        Near.Check(600, bench.Core.StartMilliamperes, 1);
        Near.Check(350, bench.Core.StopMilliamperes, 1);
        Near.Check(100, bench.Core.NoiseMilliamperes, 1);
    }

    [TestMethod]
    public void TheRestingPointIsFollowedOnlyWhileIdle()
    {
        CoreBench bench = CoreBench.Ready();
        Near.Check(1270, bench.Core.MidpointMillivolts, 1);

        // Far more than the range: clipped at the lower rail first, the mean of the readings is not the rest.
        bench.Run(80000, 3000);
        Near.Check(1270, bench.Core.MidpointMillivolts, 1);
    }

    // Nearly a second without a bucket; a whole one is a fault.
    [TestMethod]
    public void AGapKeepsTheVacuumAsItWas()
    {
        CoreBench bench = On();
        bench.Gap(900);
        bench.Run(Tool, 1000);
        Assert.IsTrue(bench.Core.IsToolRunning);
        Assert.AreEqual(1, bench.Closings);
        Assert.IsTrue(bench.Core.IsRelayClosed);
    }

    [TestMethod]
    public void AGapWhileIdleStartsNothing()
    {
        CoreBench bench = CoreBench.Ready();
        for (int i = 0; i < 50; i++)
        {
            bench.Gap(37);
            bench.Run(Idle, 50);
        }

        Assert.AreEqual(0, bench.Closings);
    }

    // A window of eight buckets and fourteen looks more.
    [TestMethod]
    public void AfterAGapAStopNeedsTwoWholeCyclesOfReadings()
    {
        CoreBench bench = On();
        bench.Gap(100);
        bench.Run(Idle, 52);
        Assert.IsTrue(bench.Core.IsToolRunning);
        bench.Run(Idle, 3);
        Assert.IsFalse(bench.Core.IsToolRunning);
    }

    // One missing bucket and an empty one after it are two.
    [TestMethod]
    [DataRow(1, 0, true)]
    [DataRow(2, 0, false)]
    [DataRow(0, 1, true)]
    [DataRow(0, 2, false)]
    [DataRow(1, 1, false)]
    public void OneMissingOrEmptyBucketIsBridgedTwoAreAGap(int missing, int empty, bool isBridged)
    {
        CoreBench bench = On();
        for (int i = 0; i < 100; i++)
        {
            bench.Now += missing * Bucket.Microseconds;
            bench.Silence(empty);
            bench.Run(Tool, empty > 0 ? 0 : 2);
            Assert.AreEqual(isBridged, bench.Core.IsWindowValid);
            bench.Run(Tool, 25);
            Assert.IsTrue(bench.Core.IsWindowValid);
            Assert.IsTrue(bench.Core.IsRelayClosed);
        }
    }

    [TestMethod]
    public void ALostRelayRestsAndClosesAgain()
    {
        CoreBench bench = On();
        bench.Core.LoseRelay(200, bench.Now);
        Assert.IsFalse(bench.Core.IsRelayClosed);
        long lost = bench.Now;
        bench.Run(Tool, 2000);
        Assert.AreEqual(500000L + RelayGate.LongestHoldMicroseconds, bench.ClosedAt - lost);
        Assert.AreEqual(200, bench.Figures[(int)NoticeKind.RelayLost]);
    }

    // Ten lost heartbeats in an hour are counted; one more within the hour is a fault that waits for a person. The eleventh comes
    // so many milliseconds after the first.
    [TestMethod]
    [DataRow(60000, true)]
    [DataRow(3599990, true)]
    [DataRow(3600000, false)]
    public void MoreThanTenLostHeartbeatsInAnHourAreAFault(int milliseconds, bool isFault)
    {
        CoreBench bench = On();
        for (int i = 1; i <= 10; i++)
        {
            bench.Core.LoseRelay(160 + i, bench.Now);
            Assert.AreEqual(i, bench.Core.LostHeartbeats.Recent(bench.Now));
            Assert.IsFalse(bench.IsFaulted(Fault.HeartbeatLost));
        }

        bench.Core.LoseRelay(175, bench.Now + (milliseconds * Time.Millisecond));
        Assert.AreEqual(isFault, bench.Core.Faults.HoldsOff);
        Assert.AreEqual(isFault, bench.Core.Faults[Fault.HeartbeatLost].IsLatched);
        Assert.AreEqual(isFault ? 175 : 0, bench.Core.Faults[Fault.HeartbeatLost].Figure);
    }

    // What was counted goes into a recording, so that its replay finds the fault as the board did.
    [TestMethod]
    public void TheCountOfLostHeartbeatsIsPartOfTheState()
    {
        CoreBench bench = On();
        for (int i = 0; i < 10; i++)
        {
            bench.Core.LoseRelay(160, bench.Now);
        }

        CoreBench replay = On();
        replay.Take(bench.Tape());
        replay.Core.LoseRelay(160, bench.Now);
        Assert.IsTrue(replay.IsFaulted(Fault.HeartbeatLost));
    }

    // The board was busy between the decision and the relay's line: the rest counts from when it can have opened.
    [TestMethod]
    public void ARelayThatOpenedBeforeAGapRestsAfterIt()
    {
        CoreBench bench = On();
        bench.Do(VacuumEvent.HandOff);
        bench.Gap(400);
        bench.Run(Tool, 2);
        bench.Do(VacuumEvent.HandOn);
        long from = bench.Now;
        Assert.IsTrue(bench.RunUntilRelay(true, Tool, 2000));
        Assert.AreEqual(500000L + RelayGate.LongestHoldMicroseconds, bench.ClosedAt - from);
    }

    [TestMethod]
    public void OnByHandClosesAtOnceAndOffByHandOpensAtOnce()
    {
        CoreBench bench = CoreBench.Ready();
        bench.Do(VacuumEvent.HandOn);
        Assert.IsTrue(bench.Core.IsRelayClosed);
        bench.Do(VacuumEvent.HandOff);
        Assert.IsFalse(bench.Core.IsRelayClosed);
    }

    [TestMethod]
    public void AHoldOpensAtOnceAndNoToolCloses()
    {
        CoreBench bench = On();
        bench.Do(VacuumEvent.Hold);
        Assert.IsFalse(bench.Core.IsRelayClosed);
        bench.Run(Idle, 1000);
        Assert.IsFalse(bench.RunUntilRelay(true, Tool, 5000));
        bench.Stand(0, 200);
        bench.Run(Idle, 12000);
        Assert.AreEqual("held", Words.Of(bench.Core.Vacuum.State));
        bench.Do(VacuumEvent.Auto);
        Assert.IsTrue(bench.RunUntilRelay(true, Tool, 1000));
    }

    // The measuring window in which a tool has stopped still holds some of a current that clips.
    [TestMethod]
    public void TheFirstMeasuringAfterAStopSaysNothingOfTheRest()
    {
        CoreBench bench = CoreBench.Ready();
        for (int i = 0; i < 20; i++)
        {
            bench.Run(80000, 300 + (i * 10));
            for (int j = 0; j < 100; j++)
            {
                bench.Run(Idle, 5);
                Near.Check(1270, bench.Core.MidpointMillivolts, 1);
            }
        }

        Assert.IsFalse(bench.IsFaulted(Fault.MidpointOut));
    }

    [TestMethod]
    public void ATapeBringsTheRelayAndTheStateToAnother()
    {
        CoreBench bench = On();
        CoreBench other = new CoreBench(CoreBench.Settings());
        other.Take(bench.Tape());
        Assert.IsTrue(other.Core.IsRelayClosed);
        Assert.IsTrue(other.Core.Vacuum.WantsVacuum);
        Assert.AreEqual(bench.Core.Vacuum.NextLook, other.Core.Vacuum.NextLook);
        Assert.IsFalse(other.Core.Vacuum.IsWaitingForSurge);

        // What was in the making needs a look.
        Assert.IsFalse(other.Core.Faults.IsCalm);
    }

    // The noise grows slowly enough for the levels to follow it, until they reach their cap.
    [TestMethod]
    public void ALineTooNoisyForItsLevelsIsToldAndEnds()
    {
        CoreBench bench = new CoreBench(CoreBench.Settings());
        bench.Rumble(500, 60000);
        Assert.IsFalse(bench.IsFaulted(Fault.Noisy));
        bench.Rumble(1300, 120000);
        Assert.IsFalse(bench.IsFaulted(Fault.Noisy));
        bench.Rumble(2200, 180000);
        Assert.IsFalse(bench.Core.IsToolRunning);
        Assert.IsTrue(bench.IsFaulted(Fault.Noisy), bench.Core.NoiseMilliamperes.ToString());
        Near.Check(600 * 250 / 100, bench.Core.Faults[Fault.Noisy].Figure, 5);
        Assert.IsFalse(bench.Core.Faults.HoldsOff);
        bench.Run(Idle, 2000);
        Assert.IsFalse(bench.IsFaulted(Fault.Noisy));
    }

    // Also where the board's clock does not begin at nought.
    [TestMethod]
    public void TheFirstClosingAfterABootWaitsForTheRest()
    {
        ConverterScale converter = new ConverterScale(ToolLine.FullScale, ToolLine.MicrovoltsACount, 850, 1750);
        DetectionCore core = new DetectionCore(converter, CoreBench.Settings(), 5 * Time.Second);
        core.Handle(VacuumEvent.HandOn, 5900000);
        Assert.IsFalse(core.IsRelayClosed);
        core.Handle(VacuumEvent.HandOn, 5950000);
        Assert.IsTrue(core.IsRelayClosed);
    }

    [TestMethod]
    public void NewTimesAreUsedAtOnce()
    {
        CoreBench bench = On();
        bench.Core.Use(CoreBench.Settings(restartGap: 2000, runOn: 1000));
        bench.Run(Idle, 1200);
        Assert.IsFalse(bench.Core.IsRelayClosed);
        bench.Do(VacuumEvent.HandOn);
        Assert.IsTrue(bench.RunUntilRelay(true, Idle, 3000));
        Assert.AreEqual(2000000L + RelayGate.LongestHoldMicroseconds, bench.ClosedAt - bench.OpenedAt);
    }

    [TestMethod]
    public void WhatItShowsIsWhatItMeasured()
    {
        CoreBench bench = CoreBench.Ready();
        int answers = bench.Core.SlowAnswers;
        bench.Run(Idle, 1000);
        Near.Check(10, bench.Core.SlowAnswers - answers, 1);
        Assert.IsTrue(bench.Core.SlowSwing < 50, bench.Core.SlowSwing.ToString());
        bench.Run(200, 1000);
        Near.Check(bench.Core.Scale.ToSwing(200), bench.Core.SlowSwing, 15);
        Near.Check(1270, bench.Core.MeanMillivolts, 1);
        bench.Run(Tool, 1000);
        Near.Check(bench.Core.Scale.ToSwing(Tool), bench.Core.Swing, bench.Core.Scale.ToSwing(Tool) / 16);
    }

    [TestMethod]
    public void AClockThatStandsIsToldToTheCaller()
    {
        CoreBench bench = On();
        Bucket bucket = new Bucket();
        bucket.EndTime = bench.Now + Bucket.Microseconds;
        Assert.IsTrue(bench.Core.Accept(bucket));
        Assert.IsFalse(bench.Core.Accept(bucket));
    }

    // The readings before a gap are no part of the next measuring: 190 ms of the tool would be nearly all of it.
    [TestMethod]
    public void AGapBeginsTheMeasuringAnew()
    {
        CoreBench bench = CoreBench.Ready();
        bench.Run(Tool, 190);
        bench.Gap(10);

        // Two cycles until the means are all known, and one until the meter's turn.
        bench.Run(Idle, 260);
        Assert.IsTrue(bench.Core.Milliamperes < 100, bench.Core.Milliamperes.ToString());
    }

    // It shows two thirds of start-at after its surge, far above the level at which a tool that is known would have stopped.
    [TestMethod]
    public void WhatIsLeftOfASurgeOnANoisyLineMustShowThatItIsATool()
    {
        CoreBench bench = new CoreBench(CoreBench.Settings(CoreSettings.AfterSurge, startAt: 90, stopBelow: 30, noise: 100));
        bench.Run(Idle, 300);
        bench.Run(2000, 40);
        Assert.IsTrue(bench.Core.IsToolRunning);
        Assert.AreEqual("starting", Words.Of(bench.Core.Vacuum.State));
        bench.Run(60, 2500);
        Assert.AreEqual(0, bench.Closings);
        Assert.IsFalse(bench.Core.IsToolRunning);
    }

    // Where start-at lies within the noise, half a second of the tool is there before the slow lane says so: no surge to wait
    // for.
    [TestMethod]
    public void ATinyToolStartsTheVacuumWithoutAWaitForASurge()
    {
        CoreBench bench = new CoreBench(CoreBench.Settings(CoreSettings.AfterSurge, startAt: 60, stopBelow: 35, noise: 80));
        bench.Run(Idle, 800);
        bench.Run(90, 700);
        Assert.IsTrue(bench.Core.IsToolRunning);
        Assert.AreEqual("on", Words.Of(bench.Core.Vacuum.State));
        Near.Between(0, bench.ClosedAt - bench.ToolStartedAt, 19999);
    }

    private static CoreBench On()
    {
        CoreBench bench = CoreBench.Ready();
        bench.Run(Tool, 500);
        Assert.IsTrue(bench.Core.IsRelayClosed);
        return bench;
    }
}
