using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// Each fault of the sensor and its line through the whole core: what raises it, that the relay opens, how it ends.
[TestClass]
public class FaultMonitorTests
{
    private const int Idle = 0;
    private const int Tool = 3000;

    // An open sensor while the vacuum is on, a converter that fails, and a rest just outside of its band: 1053 and 2175 counts of
    // 0.806 mV are 0.849 and 1.753 V; the band is 0.85 to 1.75 V.
    [TestMethod]
    [DataRow(0, 100, 0, (int)Fault.SensorAtRail)]
    [DataRow(4095, 100, 0, (int)Fault.SensorAtRail)]
    [DataRow(-1, 500, 0, (int)Fault.ConverterFails)]
    [DataRow(1053, 600, 1, (int)Fault.MidpointOut)]
    [DataRow(2175, 600, 1, (int)Fault.MidpointOut)]
    public void AFaultOfTheSensorsLineHoldsTheVacuumOff(int reading, int milliseconds, int noise, int fault)
    {
        CoreBench bench = noise == 0 ? On() : CoreBench.Ready();
        bench.Stand(reading, milliseconds, noise);
        CheckHeldOff(bench, (Fault)fault);
    }

    [TestMethod]
    [DataRow(1056)]
    [DataRow(2169)]
    public void ARestJustInsideTheBandIsGood(int reading)
    {
        CoreBench bench = CoreBench.Ready();
        bench.Stand(reading, 5000, 1);
        Assert.IsFalse(bench.IsFaulted(Fault.MidpointOut));
    }

    [TestMethod]
    public void ASensorThatNeverChangesForTwoSecondsHoldsTheVacuumOff()
    {
        CoreBench bench = CoreBench.Ready();
        bench.Stand(1576, 1990);
        Assert.IsFalse(bench.IsFaulted(Fault.SensorFrozen));
        bench.Stand(1576, 20);
        CheckHeldOff(bench, Fault.SensorFrozen);
    }

    [TestMethod]
    [DataRow(0)]
    [DataRow(1)]
    [DataRow(500000)]
    public void AClockThatStandsOrRunsBackwardsOpensTheRelayAtOnce(int microsecondsBack)
    {
        CoreBench bench = On();
        bench.StepWithoutTime(microsecondsBack);
        CheckHeldOff(bench, Fault.ClockStands);

        // Nothing after that can be believed until the board has restarted.
        bench.Run(Idle, 60000);
        Assert.IsTrue(bench.IsFaulted(Fault.ClockStands));
    }

    [TestMethod]
    public void ASecondWithoutAWindowOpensTheRelay()
    {
        CoreBench bench = On();
        bench.Silence(398);
        Assert.IsTrue(bench.Core.IsRelayClosed);
        bench.Silence(10);
        CheckHeldOff(bench, Fault.NoWindow);
    }

    [TestMethod]
    public void AGapOfMoreThanASecondIsToldWithItsLengthUntilTheFirstWindow()
    {
        CoreBench bench = On();
        bench.Gap(1500);
        bench.Run(Tool, 2);
        CheckHeldOff(bench, Fault.NoWindow);
        Assert.AreEqual(1502, bench.Core.Faults[Fault.NoWindow].Figure);
        bench.Run(Tool, 98);
        Assert.IsFalse(bench.IsFaulted(Fault.NoWindow));
        Assert.IsTrue(bench.RunUntilRelay(true, Tool, 2000));
    }

    // The reading is a lower bound, so the tool runs for sure.
    [TestMethod]
    public void AClippingCurrentIsToldAndFollowed()
    {
        CoreBench bench = On();
        bench.Run(60000, 2900);

        // So long it may be a start surge, the first tool's or a second one's.
        Assert.IsFalse(bench.IsFaulted(Fault.OverRange));
        bench.Run(60000, 200);
        Assert.IsTrue(bench.IsFaulted(Fault.OverRange));
        Assert.IsFalse(bench.Core.Faults.HoldsOff);
        Assert.IsTrue(bench.Core.IsRelayClosed);
        bench.Run(Tool, 9000);
        Assert.IsTrue(bench.IsFaulted(Fault.OverRange));
        bench.Run(Tool, 1100);
        Assert.IsFalse(bench.IsFaulted(Fault.OverRange));
        Assert.IsTrue(bench.Core.IsRelayClosed);
    }

    [TestMethod]
    [DataRow((int)Fault.SensorAtRail, 0, 100, 0)]
    [DataRow((int)Fault.MidpointOut, 900, 500, 1)]
    [DataRow((int)Fault.SensorFrozen, 1576, 2010, 0)]
    [DataRow((int)Fault.ConverterFails, -1, 500, 0)]
    public void TenSecondsOfGoodReadingsEndASensorsFaultButTheFourthInAnHourStaysUntilCleared(
        int fault, int reading, int milliseconds, int noise)
    {
        CoreBench bench = CoreBench.Ready();
        for (int i = 0; i < 3; i++)
        {
            bench.Stand(reading, milliseconds, noise);
            CheckHeldOff(bench, (Fault)fault);
            bench.Run(Idle, 9700);
            Assert.IsTrue(bench.IsFaulted((Fault)fault));
            bench.Run(Idle, 700);
            CheckFree(bench);
            bench.Run(Idle, 7000);
        }

        bench.Stand(reading, milliseconds, noise);
        Assert.IsTrue(bench.Core.Faults[(Fault)fault].IsLatched);
        bench.Run(Idle, 60000);
        Assert.IsTrue(bench.IsFaulted((Fault)fault));
        bench.Core.Faults.Clear(bench.Now);
        bench.Run(Idle, 100);
        CheckFree(bench);
    }

    [TestMethod]
    public void AFaultSeenAgainWithinTenSecondsCountsThemAnewAndIsToldOnce()
    {
        CoreBench bench = CoreBench.Ready();
        bench.Stand(-1, 500);
        bench.Run(Idle, 9000);
        bench.Stand(-1, 500);
        bench.Run(Idle, 9000);
        Assert.IsTrue(bench.IsFaulted(Fault.ConverterFails));
        Assert.AreEqual(1, bench.Core.Faults[Fault.ConverterFails].Times);
        Assert.AreEqual(1, bench.Noticed[(int)NoticeKind.FaultRaised]);
        bench.Run(Idle, 3000);
        Assert.AreEqual(1, bench.Noticed[(int)NoticeKind.FaultEnded]);

        // Seen for 10 s, and good for 10 s.
        Assert.AreEqual(20, bench.Figures[(int)NoticeKind.FaultEnded]);
    }

    [TestMethod]
    public void AFaultThatIsStillSeenComesBackAfterAClear()
    {
        CoreBench bench = On();
        bench.Stand(0, 200);
        bench.Core.Faults.Clear(bench.Now);
        Assert.IsFalse(bench.Core.Faults.HoldsOff);
        bench.Stand(0, 60);
        CheckHeldOff(bench, Fault.SensorAtRail);
        Assert.AreEqual(1, bench.Core.Faults[Fault.SensorAtRail].Times);
    }

    [TestMethod]
    public void AFaultThatEndsDoesNotHideAnother()
    {
        FaultMonitor monitor = new FaultMonitor(new NoticeQueue(), 0);
        monitor.See(Fault.NoWindow, 0, 1000);
        monitor.See(Fault.RestartLoop, 3, 1000);
        monitor.End(Fault.NoWindow, 2000);
        Assert.IsTrue(monitor.HoldsOff);
        monitor.End(Fault.RestartLoop, 3000);
        Assert.IsTrue(monitor.HoldsOff);
        monitor.Clear(4000);
        Assert.IsFalse(monitor.HoldsOff);
    }

    [TestMethod]
    public void TwoFaultsOfAKindCountAsWellAsOne()
    {
        FaultMonitor faults = new FaultBench().Faults;
        faults.See(Fault.NoWindow, 0, 1000);
        faults.See(Fault.ClockStands, 0, 1000);
        faults.See(Fault.Noisy, 0, 1000);
        faults.See(Fault.SettingsLost, 0, 1000);
        Assert.IsTrue(faults.HoldsOff);
        Assert.IsTrue(faults.WantsLook);
        faults.End(Fault.NoWindow, 2000);
        faults.End(Fault.Noisy, 2000);
        Assert.IsTrue(faults.HoldsOff);
        Assert.IsTrue(faults.WantsLook);
        faults.End(Fault.ClockStands, 3000);
        faults.End(Fault.SettingsLost, 3000);
        Assert.IsFalse(faults.HoldsOff);
        Assert.IsFalse(faults.WantsLook);
    }

    // Otherwise the box would beep, or miss a beep, after a recording has begun.
    [TestMethod]
    [DataRow((int)Fault.VacuumIdle, 7000)]
    [DataRow((int)Fault.NoWindow, 0)]
    public void WhenTheSounderWasLastAskedForIsKnownAfterATape(int fault, int expected)
    {
        FaultMonitor faults = new FaultBench().Faults;
        faults.See(Fault.OwnCurrent, 0, 9000);
        faults.See((Fault)fault, 0, 7000);
        StateTape tape = new StateTape();
        tape.Write();
        faults.Exchange(tape);
        Assert.AreEqual((long)expected, faults.LastSound);
        FaultMonitor again = new FaultBench().Faults;
        tape.Read();
        again.Exchange(tape);
        Assert.AreEqual((long)expected, again.LastSound);
    }

    // A restart loop and a bad relay line are judged anew at each boot, and what ends by itself is not brought back.
    [TestMethod]
    public void WhatWaitsForAPersonOutlivesARestart()
    {
        FaultMonitor before = new FaultBench().Faults;
        before.See(Fault.OwnCurrent, 8000, 1000);
        before.See(Fault.RestartLoop, 3, 1000);
        before.See(Fault.RelayLine, 0, 1000);
        before.See(Fault.SensorAtRail, 0, 1000);
        Assert.AreEqual(FaultBits.Of(Fault.OwnCurrent), before.ToRecall());

        FaultMonitor after = new FaultBench().Faults;
        after.Recall(Fault.SensorAtRail, 2000);
        after.End(Fault.SensorAtRail, 3000);
        Assert.IsTrue(after[Fault.SensorAtRail].IsActive);
        Assert.IsTrue(after[Fault.SensorAtRail].IsLatched);
        Assert.AreEqual(FaultState.FromBefore, after[Fault.SensorAtRail].Figure);
        Assert.IsTrue(after.HoldsOff);
        Assert.AreEqual(FaultBits.Of(Fault.SensorAtRail), after.ToRecall());
    }

    private static void CheckHeldOff(CoreBench bench, Fault fault)
    {
        Assert.IsTrue(bench.IsFaulted(fault));
        Assert.IsTrue(bench.Core.Faults.HoldsOff);
        Assert.IsFalse(bench.Core.IsRelayClosed);
        Assert.AreEqual("fault", Words.Of(bench.Core.Vacuum.State));
    }

    private static void CheckFree(CoreBench bench)
    {
        Assert.IsFalse(bench.Core.Faults.HoldsOff);
        Assert.AreEqual("idle", Words.Of(bench.Core.Vacuum.State));
        Assert.IsTrue(bench.RunUntilRelay(true, Tool, 1000));
    }

    private static CoreBench On()
    {
        CoreBench bench = CoreBench.Ready();
        Assert.IsTrue(bench.RunUntilRelay(true, Tool, 1000));
        bench.Run(Tool, 500);
        return bench;
    }
}
