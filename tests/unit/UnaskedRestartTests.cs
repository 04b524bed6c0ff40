using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// Errors far apart, and restarts for which the firmware gave no reason: a panic, a brown-out, a reset timer, a loose plug.
[TestClass]
public class UnaskedRestartTests
{
    [TestMethod]
    public void ErrorsTwentyMinutesApartAreFoundByTheThird()
    {
        SwitchBench bench = new SwitchBench();
        int starts = 0;
        for (int i = 1; i <= 6; i++)
        {
            bench.Tool(SwitchBench.Saw, 20 * 60000);
            starts += bench.Switch.Hours.Starts;
            Crash(bench);
            Assert.AreEqual(i >= 3, bench.Switch.Core.Faults[Fault.RestartLoop].IsActive);
        }

        bench.Run(10000);
        Assert.IsFalse(bench.Switch.Core.IsRelayClosed);
        string why = bench.Answer("why");
        Assert.IsTrue(Texts.Has(why, "restarts in a row, 3 restarts that nobody asked for; stays until 'clear'"), why);
    }

    [TestMethod]
    public void TheLogSaysWhichErrorItWasAndWhere()
    {
        SwitchBench bench = new SwitchBench();
        Crash(bench);
        string events = bench.Answer("events");
        Assert.IsTrue(
            Texts.Has(events, "boot 1 0:00:00  unexpected error while reading the sensor: invalid operation"), events);
        Assert.IsTrue(Texts.Has(events, "boot 2 0:00:00  came up: an unexpected error"), events);
    }

    [TestMethod]
    public void AnErrorAtTheRelayIsSaidToBeThere()
    {
        SwitchBench bench = new SwitchBench();
        bench.Tool(SwitchBench.Saw, 2000);
        bench.Board.RelayThrows = true;
        bench.Run(1000);
        bench.Board.RelayThrows = false;
        bench.Boot();
        Assert.IsTrue(Texts.Has(bench.Answer("events"), "unexpected error while feeding the relay: invalid operation"));
    }

    // One write for each life that counts, as firmware/README.md says, and one more: the first ever goes to both slots.
    [TestMethod]
    public void AHundredResetsWithinAMinuteWriteNineTimesAndThenTheVacuumStaysOff()
    {
        SwitchBench bench = new SwitchBench();
        for (int i = 1; i <= 100; i++)
        {
            Assert.AreEqual(i > BootRecord.MostShortLives, bench.Switch.Core.Faults.HoldsOff);
            bench.Tool(SwitchBench.Saw, 3000);
            Assert.AreEqual(i <= BootRecord.MostShortLives, bench.Switch.Core.IsRelayClosed);
            bench.Board.Line.Milliamperes = SwitchBench.NoTool;
            bench.Boot();
        }

        Assert.AreEqual(1 + BootRecord.MostShortLives, Writes(bench));
        string why = bench.Answer("why");
        Assert.IsTrue(Texts.Has(why, "restarts in a row, 8 restarts that nobody asked for; stays until 'clear'"), why);

        // It does not end by itself.
        bench.Run(70000);
        bench.Boot();
        Assert.IsTrue(bench.Switch.Core.Faults.HoldsOff);
        bench.Answer("clear");
        bench.Boot();
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
        Assert.AreEqual(1, bench.Switch.Boot.ShortLives);
    }

    // A day has 1,440 minutes.
    [TestMethod]
    public void ResetsAfterAMinuteEachWriteTwiceARoundAndAreNoLoop()
    {
        SwitchBench bench = new SwitchBench();
        for (int i = 0; i < 100; i++)
        {
            bench.Run(61000);
            bench.Boot();
        }

        Assert.AreEqual(1 + 1 + (2 * 100), Writes(bench));
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
    }

    // With a fault in each of them once more.
    [TestMethod]
    public void ResetsWithAFaultInEachWriteThreeTimesARound()
    {
        SwitchBench bench = new SwitchBench();
        for (int i = 0; i < 20; i++)
        {
            bench.Board.BurstsThatThrow = 20;
            bench.Run(61000);
            bench.Boot();
        }

        Assert.AreEqual(1 + 1 + 1 + (3 * 20), Writes(bench));
    }

    // A person at the bench who tries it out.
    [TestMethod]
    public void PluggingInEightTimesIsNoLoopAndAMinuteBeginsTheCountAnew()
    {
        SwitchBench bench = new SwitchBench();
        for (int round = 0; round < 3; round++)
        {
            for (int i = 1; i < BootRecord.MostShortLives; i++)
            {
                bench.Run(5000);
                bench.Boot();
            }

            bench.Run(61000);
            bench.Boot();
            Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
        }
    }

    [TestMethod]
    public void ARestartThatIsAskedForIsNotCounted()
    {
        SwitchBench bench = new SwitchBench();
        for (int i = 0; i < 20; i++)
        {
            bench.Answer("restart");
            bench.Answer("yes");
            bench.Boot();
            Assert.AreEqual(1, bench.Switch.Boot.ShortLives);
        }

        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
    }

    private static void Crash(SwitchBench bench)
    {
        bench.Board.NowThrows = true;
        bench.Switch.Step();
        bench.Boot();
    }

    private static int Writes(SwitchBench bench)
    {
        int writes = 0;
        for (int i = 0; i < Slots.Count; i++)
        {
            writes += bench.Board.SlotWrites[i];
        }

        return writes;
    }
}
