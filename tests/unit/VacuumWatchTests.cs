using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class VacuumWatchTests
{
    private const int Off = 150;
    private const int On = 8000;
    private const int Unknown = -1;

    [TestMethod]
    public void ASecondOnWithoutCurrentIsTold()
    {
        VacuumBench bench = new VacuumBench();
        bench.Watch.NoteRelay(true, bench.Now);
        bench.Run(Off, 950);
        Assert.IsFalse(bench.Faults[Fault.VacuumIdle].IsActive);
        bench.Run(Off, 50);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].IsActive);
        Assert.AreEqual(Off, bench.Faults[Fault.VacuumIdle].Figure);
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    [TestMethod]
    public void ItEndsWhenTheVacuumRunsAndNotBefore()
    {
        VacuumBench bench = new VacuumBench();
        bench.Watch.NoteRelay(true, bench.Now);
        bench.Run(Off, 3000);
        bench.Watch.NoteRelay(false, bench.Now);
        bench.Run(Off, 10000);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].IsActive);
        bench.Watch.NoteRelay(true, bench.Now);
        bench.Run(On, 450);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].IsActive);
        bench.Run(On, 50);
        Assert.IsFalse(bench.Faults[Fault.VacuumIdle].IsActive);
    }

    // The sounder goes by the time at which it was last seen.
    [TestMethod]
    public void ItIsSeenOnceAtEachStartThatFails()
    {
        VacuumBench bench = new VacuumBench();
        bench.Watch.NoteRelay(true, bench.Now);
        bench.Run(Off, 2000);
        long first = bench.Faults[Fault.VacuumIdle].LastSeen;
        bench.Run(Off, 5000);
        Assert.AreEqual(first, bench.Faults[Fault.VacuumIdle].LastSeen);
        bench.Watch.NoteRelay(false, bench.Now);
        bench.Run(Off, 2000);
        bench.Watch.NoteRelay(true, bench.Now);
        bench.Run(Off, 2000);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].LastSeen > first + 5000000);
        Assert.AreEqual(1, bench.Faults[Fault.VacuumIdle].Times);
    }

    [TestMethod]
    public void ACutOutThatOpensWhileItRunsIsTold()
    {
        VacuumBench bench = new VacuumBench();
        bench.Watch.NoteRelay(true, bench.Now);
        bench.Run(On, 5000);
        Assert.IsTrue(bench.Watch.IsRunning);
        bench.Run(Off, 600);
        Assert.IsFalse(bench.Watch.IsRunning);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].IsActive);
    }

    [TestMethod]
    public void TwoSecondsOfCurrentWithTheRelayOpenKeepItOffUntilCleared()
    {
        VacuumBench bench = new VacuumBench();
        bench.Watch.NoteRelay(true, bench.Now);
        bench.Run(On, 3000);
        bench.Watch.NoteRelay(false, bench.Now);
        bench.Run(On, 1950);
        Assert.IsFalse(bench.Faults.HoldsOff);
        bench.Run(On, 50);
        Assert.IsTrue(bench.Faults[Fault.VacuumStays].IsLatched);
        Assert.IsTrue(bench.Faults.HoldsOff);
        Assert.AreEqual(On, bench.Faults[Fault.VacuumStays].Figure);
        bench.Run(Off, 20000);
        Assert.IsTrue(bench.Faults.HoldsOff);
        bench.Faults.Clear(bench.Now);
        bench.Run(Off, 20000);
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    [TestMethod]
    public void AWeldThatIsStillThereComesBackAfterAClear()
    {
        VacuumBench bench = new VacuumBench();
        bench.Run(On, 3000);
        bench.Faults.Clear(bench.Now);
        bench.Run(On, 100);
        Assert.IsTrue(bench.Faults[Fault.VacuumStays].IsLatched);
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
        bench.Watch.NoteRelay(true, bench.Now);
        bench.Run(Unknown, 5000);
        Assert.IsFalse(bench.Faults[Fault.VacuumIdle].IsActive);
        bench.Run(On, 2000);
        bench.Watch.NoteRelay(false, bench.Now);
        bench.Run(Unknown, 5000);
        Assert.IsFalse(bench.Watch.IsRunning);
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    // No current at all is a known one.
    [TestMethod]
    public void NoughtIsNoVacuum()
    {
        VacuumBench bench = new VacuumBench();
        bench.Watch.NoteRelay(true, bench.Now);
        bench.Run(0, 1000);
        Assert.IsTrue(bench.Faults[Fault.VacuumIdle].IsActive);
    }

    // After a boot the driver and the contact have their time as well.
    [TestMethod]
    public void TheTimeOfAStopBeginsWithTheBoard()
    {
        VacuumBench bench = new VacuumBench();
        bench.Run(On, 1950);
        Assert.IsFalse(bench.Faults.HoldsOff);
        bench.Run(On, 50);
        Assert.IsTrue(bench.Faults.HoldsOff);
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
