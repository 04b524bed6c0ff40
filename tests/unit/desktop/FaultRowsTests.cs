using System;
using System.Collections.Generic;
using System.Linq;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// A fault, a notice or a kind of log entry that is added to its enum must not be forgotten elsewhere: each complaint names the
// file.
[TestClass]
public class FaultRowsTests
{
    private const string Faults =
        "SensorAtRail MidpointOut SensorFrozen ConverterFails NoWindow ClockStands OverRange Noisy ShortCycling RanTooLong "
        + "SettingsLost RestartLoop RelayLine VacuumIdle VacuumStays OwnCurrent HeartbeatLost SlowBoard";

    private const string Kinds =
        "StateChanged FaultRaised FaultEnded LongRunAhead RelayLost CameUp Saved SaveFailed Cleared FellBack FilterDue Taught "
        + "PartFailed Probed StaysOn Error HoldInDoubt Burst ToolStopped";

    private const FaultTraits Ends =
        FaultTraits.EndsAfterGoodReadings | FaultTraits.EndsByItsOwner
        | FaultTraits.EndsWithRestart | FaultTraits.StaysUntilCleared;

    private static readonly Fault[] s_faults = Enum.GetValues<Fault>();

    private static readonly LogKind[] s_kinds = Enum.GetValues<LogKind>().Where(kind => kind != LogKind.Unknown).ToArray();

    [TestMethod]
    public void EveryFaultHasARowInTheTable()
    {
        CheckNone(s_faults.Where(fault => FaultTable.Of(fault) == FaultTable.NoRow)
            .Select(fault => $"detection-core/Faults/FaultTable.cs has no row for Fault.{fault}"));
        CheckNone(s_faults.Where(fault => !IsPowerOfTwo(FaultTable.Of(fault) & Ends))
            .Select(fault => $"detection-core/Faults/FaultTable.cs: the row of Fault.{fault} must have one of the four ends"));
    }

    [TestMethod]
    public void EveryFaultHasItsOwnWords()
    {
        string unknown = FaultText.Name((Fault)byte.MaxValue);
        CheckNone(s_faults.Where(fault => FaultText.Name(fault) == unknown)
            .Select(fault => $"firmware/switch/Log/FaultText.cs has no row for Fault.{fault}"));
        Assert.AreEqual(s_faults.Length, s_faults.Select(FaultText.Name).Distinct().Count(), "two faults have the same name");
        CheckNone(s_faults.Where(fault => FaultText.ToDo(fault).Length == 0 || FaultText.Ends(fault, false).Length == 0)
            .Select(fault => $"the row of Fault.{fault} in firmware/switch/Log/FaultText.cs lacks a word"));
    }

    [TestMethod]
    public void TheWordsOfAPausingBoardNameTheLimit() =>
        Assert.Contains(
            $"more than {DetectionCore.MostLostAnHour} times",
            Texts.Take(FaultText.Seen(new TextOutput(), Fault.HeartbeatLost, 1)));

    // In doubt the vacuum is off, and nothing crashes; also for a fault that a newer version has left in the log.
    [TestMethod]
    public void AFaultWithoutARowKeepsTheVacuumOff()
    {
        Fault fault = (Fault)FaultMonitor.Count;
        Assert.IsTrue(FaultTable.Has(fault, FaultTraits.KeepsVacuumOff));
        Assert.AreEqual("unknown fault", FaultText.Name(fault));
        Assert.AreEqual("7 was seen", Texts.Take(FaultText.Seen(new TextOutput(), fault, 7)));
        Assert.AreEqual("see 'events' for the reason, then 'clear'", FaultText.ToDo(fault));
    }

    [TestMethod]
    public void NumbersInFlashNeverChange()
    {
        CheckNumbers(Faults, s_faults.Select(fault => (fault.ToString(), (int)fault)));
        CheckNumbers(Kinds, s_kinds.Select(kind => (kind.ToString(), (int)kind)));
        Assert.AreEqual(FaultMonitor.Count, s_faults.Length, "FaultMonitor.Count is not the number of faults");
        Assert.IsLessThan(32, FaultMonitor.Count, "FaultBits has no bit left");
    }

    [TestMethod]
    public void EveryNoticeIsLoggedAsWhatItIs()
    {
        CheckNone(Enum.GetValues<NoticeKind>().Where(kind => LogKinds.Of(kind).ToString() != kind.ToString())
            .Select(kind => $"firmware/switch/Log/LogKinds.cs has no row for NoticeKind.{kind}, or a wrong one"));
        Assert.AreEqual(LogKind.Unknown, LogKinds.Of((NoticeKind)99));
    }

    [TestMethod]
    public void EveryKindOfEntryHasWords()
    {
        CheckNone(s_kinds.Where(kind => Text(kind).Contains("another version"))
            .Select(kind => $"firmware/switch/Log/EventText.cs has no words for LogKind.{kind}"));
    }

    private static string Text(LogKind kind)
    {
        TextOutput output = new TextOutput();
        EventText.Write(output, new LogEntry { Kind = kind });
        return Texts.Take(output);
    }

    private static void CheckNumbers(string names, IEnumerable<(string Name, int Number)> values)
    {
        string[] expected = names.Split(' ');
        CheckNone(values.Where(value => value.Number >= expected.Length || expected[value.Number] != value.Name)
            .Select(value => $"FaultRowsTests.cs does not know {value.Name} by {value.Number}; flash holds such numbers"));
    }

    private static void CheckNone(IEnumerable<string> findings)
    {
        Assert.AreEqual("", string.Join(Environment.NewLine, findings));
    }

    private static bool IsPowerOfTwo(FaultTraits ends)
    {
        return ends != FaultTraits.None && (ends & (ends - 1)) == FaultTraits.None;
    }
}
