using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// What a person finds in flash who unplugs the box because of a fault, as its text says.
[TestClass]
public class EvidenceTests
{
    [TestMethod]
    [DataRow(SwitchBench.NoTool)]
    [DataRow(SwitchBench.Saw)]
    public void AFaultThatKeepsTheVacuumOffIsInFlashAtOnce(int milliamperes)
    {
        SwitchBench bench = new SwitchBench();
        bench.Tool(milliamperes, 2000);
        Fail(bench, 100);
        bench.Boot();
        Assert.IsTrue(Texts.Has(bench.Answer("events"), "converter fails: 8 reads failed in a row"));
    }

    // Coming up is not worth a write by itself, and must not use up the one that the log has for now.
    [TestMethod]
    public void ComingUpWritesTheBootRecordAndNothingElse()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(20 * 60000);
        Assert.AreEqual(0, bench.Board.SlotWrites[Slots.Log] + bench.Board.SlotWrites[Slots.Log + 1]);
        bench.Tool(SwitchBench.Saw, 2000);
        bench.Tool(SwitchBench.NoTool, 6000);
        bench.Boot();
        string events = bench.Answer("events");
        Assert.IsTrue(Texts.Has(events, "boot 1 0:00:00  came up: power on"), events);
        Assert.IsTrue(Texts.Has(events, "vacuum told off: run-on over"), events);
    }

    // The readings stay away for a moment again and again: the first is written at once, then one in a minute.
    [TestMethod]
    public void AFaultThatComesAndGoesIsWrittenOnceAMinute()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(70000);
        int writes = LogWrites(bench);
        for (int i = 0; i < 100; i++)
        {
            bench.Board.Stall = 1200000;
            bench.Run(3000);
        }

        Assert.IsTrue(bench.Logged(LogKind.FaultRaised) >= EventLog.Evidence);
        Assert.IsTrue(LogWrites(bench) - writes <= 6, (LogWrites(bench) - writes).ToString());
        Assert.IsTrue(LogWrites(bench) - writes >= 5);
    }

    [TestMethod]
    public void ALogWriteThatFailedIsTriedAgain()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.SlotWritesThrow = true;
        Fail(bench, 500);
        bench.Board.SlotWritesThrow = false;
        bench.Run(60000);
        bench.Boot();
        Assert.IsTrue(Texts.Has(bench.Answer("events"), "converter fails"));
    }

    [TestMethod]
    public void OnAndOffDoNotPushAFaultOut()
    {
        EventLog log = new EventLog(new SafeBoard(new FakeBoard()));
        Put(log, LogKind.FaultRaised, (int)Fault.ConverterFails, 7);
        Put(log, LogKind.Error, 1, 8);
        for (int i = 0; i < 100; i++)
        {
            Put(log, LogKind.StateChanged, 0, i);
            Put(log, LogKind.FaultRaised, (int)Fault.ShortCycling, i);
        }

        Assert.AreEqual(EventLog.Length, log.Count);
        Assert.AreEqual("7 8 81", Texts.Row(Figure(log, 0), Figure(log, 1), Figure(log, 2)));
        Assert.AreEqual(99, Figure(log, 39));
    }

    // Nor does a fault that comes and goes take the places of the others.
    [TestMethod]
    public void OfTheFaultsTheLatestAreKept()
    {
        EventLog log = new EventLog(new SafeBoard(new FakeBoard()));
        for (int i = 0; i < 50; i++)
        {
            Put(log, LogKind.StateChanged, 0, i);
        }

        for (int i = 0; i < 100; i++)
        {
            Put(log, LogKind.FaultRaised, (int)Fault.NoWindow, 100 + i);
        }

        Assert.AreEqual(EventLog.Length, log.Count);
        int last = EventLog.Length - EventLog.Evidence - 1;
        Assert.AreEqual("49 187 199", Texts.Row(Figure(log, last - 1), Figure(log, last), Figure(log, 39)));
    }

    [TestMethod]
    public void ALockoutIsInFlashAtOnceAndItsClearingToo()
    {
        SwitchBench bench = new SwitchBench();
        for (int i = 0; i < 4; i++)
        {
            bench.Run(11000);
            Fail(bench, 100);
        }

        bench.Boot();
        Assert.IsTrue(bench.Switch.Core.Faults[Fault.ConverterFails].IsLatched);
        string why = bench.Answer("why");
        Assert.IsTrue(Texts.Has(why, "it stood before the restart; stays until 'clear'"), why);
        bench.Answer("clear");
        bench.Boot();
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
    }

    // Runs that are too short for a write each add up over the evenings.
    [TestMethod]
    public void APowerCutLosesTheRunThatItEndsAndLessThanThreeMinutes()
    {
        SwitchBench bench = new SwitchBench();
        for (int evening = 0; evening < 3; evening++)
        {
            int before = bench.Switch.Hours.Seconds;
            for (int run = 0; run < 4; run++)
            {
                bench.Tool(SwitchBench.Saw, 70000);
                bench.Tool(SwitchBench.NoTool, 7000);
            }

            bench.Tool(SwitchBench.Saw, 50000);
            bench.Board.Line.Milliamperes = SwitchBench.NoTool;
            bench.Boot();
            int kept = bench.Switch.Hours.Seconds - before;
            Assert.IsTrue(kept <= 300 && kept > 300 - 180, kept.ToString());
        }
    }

    private static void Fail(SwitchBench bench, int milliseconds)
    {
        bench.Board.BurstsThatThrow = 20;
        bench.Run(milliseconds);
    }

    private static void Put(EventLog log, LogKind kind, int first, int figure)
    {
        LogEntry entry = log.Add();
        entry.Kind = kind;
        entry.First = first;
        entry.Figure = figure;
    }

    private static int Figure(EventLog log, int index)
    {
        return log.At(index).Figure;
    }

    private static int LogWrites(SwitchBench bench)
    {
        return bench.Board.SlotWrites[Slots.Log] + bench.Board.SlotWrites[Slots.Log + 1];
    }
}
