using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class VacuumWatchTests
{
    private const int Off = 150;
    private const int On = 8000;
    private const int Unknown = -1;

    // No current at all is a known one.
    [TestMethod]
    [DataRow(Off)]
    [DataRow(0)]
    public void ASecondOnWithoutCurrentIsTold(int milliamperes)
    {
        VacuumBench bench = new VacuumBench();
        bench.Switch(true, milliamperes, 950);
        Assert.IsFalse(bench.Faults[Fault.VacuumIdle].IsActive);
        bench.Run(milliamperes, 50);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].IsActive);
        Assert.AreEqual(milliamperes, bench.Faults[Fault.VacuumIdle].Figure);
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    [TestMethod]
    public void ItEndsWhenTheVacuumRunsAndNotBefore()
    {
        VacuumBench bench = new VacuumBench();
        bench.Switch(true, Off, 3000);
        bench.Switch(false, Off, 10000);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].IsActive);
        bench.Switch(true, On, 450);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].IsActive);
        bench.Run(On, 50);
        Assert.IsFalse(bench.Faults[Fault.VacuumIdle].IsActive);
    }

    // The sounder goes by the time at which it was last seen.
    [TestMethod]
    public void ItIsSeenOnceAtEachStartThatFails()
    {
        VacuumBench bench = new VacuumBench();
        bench.Switch(true, Off, 2000);
        long first = bench.Faults[Fault.VacuumIdle].LastSeen;
        bench.Run(Off, 5000);
        Assert.AreEqual(first, bench.Faults[Fault.VacuumIdle].LastSeen);
        bench.Switch(false, Off, 2000);
        bench.Switch(true, Off, 2000);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].LastSeen > first + 5000000);
        Assert.AreEqual(1, bench.Faults[Fault.VacuumIdle].Times);
    }

    [TestMethod]
    public void ACutOutThatOpensWhileItRunsIsTold()
    {
        VacuumBench bench = new VacuumBench();
        bench.Switch(true, On, 5000);
        Assert.IsTrue(bench.Watch.IsRunning);
        bench.Run(Off, 600);
        Assert.IsFalse(bench.Watch.IsRunning);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].IsActive);
    }

    // The driver and the contact have their time after an opening, and also after a boot.
    [TestMethod]
    [DataRow(true)]
    [DataRow(false)]
    public void TwoSecondsOfCurrentWithTheRelayOpenKeepItOffUntilCleared(bool hasOpened)
    {
        VacuumBench bench = new VacuumBench();
        if (hasOpened)
        {
            bench.Switch(true, On, 3000);
            bench.Relay(false);
        }

        bench.Run(On, 1950);
        Assert.IsFalse(bench.Faults.HoldsOff);
        bench.Run(On, 50);
        Assert.IsTrue(bench.Faults[Fault.VacuumStays].IsLatched);
        Assert.IsTrue(bench.Faults.HoldsOff);
        Assert.AreEqual(On, bench.Faults[Fault.VacuumStays].Figure);

        // A weld that is still there comes back after a clear, and stays when the current has gone.
        bench.Faults.Clear(bench.Now);
        bench.Run(On, 100);
        bench.Run(Off, 20000);
        Assert.IsTrue(bench.Faults[Fault.VacuumStays].IsLatched);
        bench.Faults.Clear(bench.Now);
        bench.Run(Off, 20000);
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    // That it runs with the relay told to open is told until it is seen that it does not: no clear ends it, no gap in the
    // answers, no single answer without current.
    [TestMethod]
    public void AVacuumThatRunsOnDoesSoUntilItIsSeenToStop()
    {
        VacuumBench bench = new VacuumBench();
        bench.Run(On, 1950);
        Assert.IsFalse(bench.Faults.IsVacuumStuck);
        bench.Run(On, 50);
        Assert.IsTrue(bench.Faults.IsVacuumStuck);
        bench.Faults.Clear(bench.Now);
        Assert.IsTrue(bench.Faults.IsVacuumStuck);
        Assert.IsTrue(bench.Faults[Fault.VacuumStays].IsLatched);
        bench.Run(Unknown, 3000);
        bench.Run(Off, 450);
        bench.Run(Unknown, 50);
        bench.Run(On, 50);
        bench.Run(Off, 450);
        Assert.IsTrue(bench.Faults.IsVacuumStuck);
        bench.Run(Off, 50);
        Assert.IsFalse(bench.Faults.IsVacuumStuck);
        Assert.IsTrue(bench.Faults[Fault.VacuumStays].IsLatched);

        // Known as it is by now, it is told half a second after the current is back.
        bench.Run(On, 450);
        Assert.IsFalse(bench.Faults.IsVacuumStuck);
        bench.Run(On, 50);
        Assert.IsTrue(bench.Faults.IsVacuumStuck);
    }

    // A converter's drop-out makes a current of a single answer.
    [TestMethod]
    public void SingleAnswersAreNoVacuum()
    {
        VacuumBench bench = new VacuumBench();
        for (int i = 0; i < 50; i++)
        {
            bench.Run(On, 450);
            bench.Run(Off, 50);
        }

        Assert.IsFalse(bench.Watch.IsRunning);
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    [TestMethod]
    public void NothingIsSaidOfWhatIsNotKnown()
    {
        VacuumBench bench = new VacuumBench();
        bench.Switch(true, Unknown, 5000);
        Assert.IsFalse(bench.Faults[Fault.VacuumIdle].IsActive);
        bench.Run(On, 2000);
        bench.Switch(false, Unknown, 5000);
        Assert.IsFalse(bench.Watch.IsRunning);
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    [TestMethod]
    [DataRow(499, false)]
    [DataRow(500, true)]
    public void FromHalfAnAmpereOnItRuns(int milliamperes, bool runs)
    {
        VacuumBench bench = new VacuumBench();
        bench.Run(milliamperes, 1000);
        Assert.AreEqual(runs, bench.Watch.IsRunning);
    }
}
