using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class EventLogTests
{
    [TestMethod]
    public void TheLastFortyAreKeptOldestFirst()
    {
        EventLog log = New(new FakeBoard());
        Fill(log, 100);
        Assert.AreEqual("40 60 99", Texts.Row(log.Count, log.At(0).Figure, log.At(39).Figure));
    }

    [TestMethod]
    public void TheySurviveAPowerCut()
    {
        FakeBoard board = new FakeBoard();
        EventLog log = New(board);
        Fill(log, 45);
        LogEntry last = log.Add();
        last.Boot = 70000;
        last.Seconds = 123456789;
        last.Kind = LogKind.FaultRaised;
        last.First = 11;
        last.Second = 255;
        last.Figure = -5;
        last.Milliamperes = 47000;
        Assert.IsTrue(log.IsDirty);
        Assert.IsTrue(log.Save());
        Assert.IsFalse(log.IsDirty);

        EventLog again = New(board);
        Assert.IsFalse(again.IsDirty);
        Assert.AreEqual(40, again.Count);
        Assert.AreEqual(6, again.At(0).Figure);
        LogEntry read = again.At(39);
        Assert.AreEqual(
            "70000 123456789 " + (int)LogKind.FaultRaised + " 11 255 -5 47000",
            Texts.Row(read.Boot, read.Seconds, (int)read.Kind, read.First, read.Second, read.Figure, read.Milliamperes));
    }

    [TestMethod]
    public void ATornLogIsTheOneBefore()
    {
        FakeBoard board = new FakeBoard();
        EventLog log = New(board);
        Fill(log, 3);
        log.Save();
        Fill(log, 4);
        log.Save();
        board.SlotLengths[Slots.Log] -= 5;
        Assert.AreEqual(3, New(board).Count);
    }

    [TestMethod]
    public void AnEmptyLogIsReadAsSuch()
    {
        EventLog log = New(new FakeBoard());
        Assert.AreEqual(0, log.Count);
        Assert.IsFalse(log.IsDirty);
    }

    private static EventLog New(FakeBoard board)
    {
        EventLog log = new EventLog(new SafeBoard(board));
        log.Load();
        return log;
    }

    private static void Fill(EventLog log, int entries)
    {
        for (int i = 0; i < entries; i++)
        {
            log.Add().Figure = i;
        }
    }
}
