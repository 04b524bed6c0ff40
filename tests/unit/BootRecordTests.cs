using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class BootRecordTests
{
    [TestMethod]
    public void BootsAreCountedFromOne()
    {
        FakeBoard board = new FakeBoard();
        Assert.AreEqual(1, Begin(board).Number);
        Assert.AreEqual(2, Begin(board).Number);
        Assert.AreEqual(3, Begin(board).Number);
    }

    [TestMethod]
    public void WithoutAnotherWordTheNextBootIsAPowerOn()
    {
        FakeBoard board = new FakeBoard();
        Begin(board);
        Assert.AreEqual((int)BootReason.PowerOn, (int)Begin(board).Reason);
    }

    [TestMethod]
    public void WhatWasWrittenAtTheRestartComesBack()
    {
        FakeBoard board = new FakeBoard();
        BootRecord before = Begin(board);
        before.Restarts = 2;
        before.Lockouts = 5;
        before.IsHeld = true;
        before.Write(BootReason.ClockStood);
        BootRecord after = Begin(board);
        Assert.AreEqual((int)BootReason.ClockStood, (int)after.Reason);
        Assert.AreEqual(2, after.Restarts);
        Assert.AreEqual(5, after.Lockouts);
        Assert.IsTrue(after.IsHeld);
    }

    // Plugging in is a fresh start, but somebody may still have a hand in the bin.
    [TestMethod]
    public void APowerOnForgetsRestartsAndLockoutsAndKeepsTheHold()
    {
        FakeBoard board = new FakeBoard();
        BootRecord before = Begin(board);
        before.Restarts = 2;
        before.Lockouts = 5;
        before.IsHeld = true;
        before.Write(BootReason.PowerOn);
        BootRecord after = Begin(board);
        Assert.AreEqual(0, after.Restarts);
        Assert.AreEqual(0, after.Lockouts);
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
