using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class BootRecordTests
{
    // Plugging in quickly is no restart.
    [TestMethod]
    public void BootsAreCountedFromOneAndWithoutAnotherWordAreAPowerOn()
    {
        FakeBoard board = new FakeBoard();
        for (int i = 1; i <= 5; i++)
        {
            BootRecord record = Begin(board);
            Assert.AreEqual(i, record.Number);
            Assert.AreEqual((int)BootReason.PowerOn, (int)record.Reason);
        }
    }

    // Plugging in is a fresh start for restarts. What waits for a person still does, and somebody may have a hand in the bin.
    [TestMethod]
    [DataRow((int)BootReason.ClockStood, 2, 5)]
    [DataRow((int)BootReason.PowerOn, 0, 5)]
    public void WhatWasWrittenAtTheRestartComesBackButAPowerOnForgetsRestarts(int reason, int restarts, int lockouts)
    {
        FakeBoard board = new FakeBoard();
        BootRecord before = Begin(board);
        before.Restarts = 2;
        before.Lockouts = 5;
        before.IsHeld = true;
        before.Write((BootReason)reason);
        BootRecord after = Begin(board);
        Assert.AreEqual(Texts.Row(reason, restarts, lockouts), Texts.Row((int)after.Reason, after.Restarts, after.Lockouts));
        Assert.IsTrue(after.IsHeld);
    }

    [TestMethod]
    public void ALostRecordIsAFirstBootThatIsHeld()
    {
        FakeBoard board = new FakeBoard();
        Begin(board);
        Begin(board);
        board.SlotLengths[Slots.Boot] = 3;
        board.SlotLengths[Slots.Boot + 1] = 3;
        BootRecord record = Begin(board);
        Assert.AreEqual(1, record.Number);
        Assert.AreEqual((int)BootReason.PowerOn, (int)record.Reason);
        Assert.IsTrue(record.IsHeld && record.IsHoldInDoubt && record.IsLost);
    }

    // What an older firmware has written, and what a newer one may write.
    [TestMethod]
    [DataRow(17, 0)]
    [DataRow(21, 2)]
    [DataRow(40, 2)]
    public void ARecordOfAnyLengthFromSeventeenOnIsRead(int length, int shortLives)
    {
        FakeBoard board = new FakeBoard();
        Begin(board);
        SlotPair slots = new SlotPair(new SafeBoard(board), Slots.Boot);
        slots.Read(1);
        LittleEndian.Write(slots.Buffer, SlotPair.Head, 41);
        slots.Buffer[SlotPair.Head + 16] = 1;
        LittleEndian.Write(slots.Buffer, SlotPair.Head + 17, 1);
        slots.Write(1, length);
        BootRecord record = Begin(board);
        Assert.IsTrue(record.IsHeld && !record.IsHoldInDoubt && !record.IsLost);
        Assert.AreEqual(Texts.Row(42, shortLives == 0 ? 1 : 2), Texts.Row(record.Number, record.ShortLives));
    }

    [TestMethod]
    public void ARecordThatIsTooShortIsLost()
    {
        FakeBoard board = new FakeBoard();
        Begin(board);
        SlotPair slots = new SlotPair(new SafeBoard(board), Slots.Boot);
        slots.Read(1);
        slots.Write(1, 16);
        Assert.IsTrue(Begin(board).IsHoldInDoubt);
    }

    private static BootRecord Begin(FakeBoard board)
    {
        BootRecord record = new BootRecord(new SafeBoard(board));
        record.Begin();
        return record;
    }
}
