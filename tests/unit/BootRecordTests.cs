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

    // Plugging in is a fresh start, but somebody may still have a hand in the bin.
    [TestMethod]
    [DataRow((int)BootReason.ClockStood, 2, 5)]
    [DataRow((int)BootReason.PowerOn, 0, 0)]
    public void WhatWasWrittenAtTheRestartComesBackAfterAPowerOnOnlyTheHold(int reason, int restarts, int lockouts)
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
    public void ALostRecordIsAFirstBoot()
    {
        FakeBoard board = new FakeBoard();
        Begin(board);
        Begin(board);
        board.SlotLengths[Slots.Boot] = 3;
        board.SlotLengths[Slots.Boot + 1] = 3;
        BootRecord record = Begin(board);
        Assert.AreEqual(1, record.Number);
        Assert.AreEqual((int)BootReason.PowerOn, (int)record.Reason);
        Assert.IsFalse(record.IsHeld);
    }

    private static BootRecord Begin(FakeBoard board)
    {
        BootRecord record = new BootRecord(new SafeBoard(board));
        record.Begin();
        return record;
    }
}
