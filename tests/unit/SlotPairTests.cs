using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SlotPairTests
{
    private const int First = Slots.Settings;
    private const int Length = 20;
    private const int Layout = 3;

    [TestMethod]
    public void WhatWasWrittenIsRead()
    {
        FakeBoard board = new FakeBoard();
        Assert.IsTrue(Write(board, 7));
        SlotPair pair = CheckRead(board, 7);
        Assert.AreEqual(Length, pair.Length);
        Assert.IsFalse(pair.HasTornSlot);
    }

    [TestMethod]
    public void AnUnwrittenPairIsNeitherWholeNorTorn()
    {
        SlotPair pair = New(new FakeBoard());
        Assert.IsFalse(pair.Read(Layout));
        Assert.IsFalse(pair.HasTornSlot);
    }

    [TestMethod]
    public void TheSlotsAreWrittenInTurnAndNoOther()
    {
        FakeBoard board = new FakeBoard();
        for (int i = 0; i < 6; i++)
        {
            Write(board, i);

            // The first write goes to both, since neither was good.
            Assert.AreEqual(i == 0 ? 1 : (i + 3) / 2, board.SlotWrites[First + ((i + 1) & 1)]);
            CheckRead(board, i);
        }

        for (int i = 2; i < Slots.Count; i++)
        {
            Assert.AreEqual(0, board.SlotWrites[i]);
        }
    }

    [TestMethod]
    [DataRow(0)]
    [DataRow(1)]
    public void ASlotThatIsCutAnywhereDoesNotTakeTheOtherWithIt(int cut)
    {
        FakeBoard board = Written();
        int whole = board.SlotLengths[First + cut];
        for (int length = 0; length < whole; length++)
        {
            board.SlotLengths[First + cut] = length;
            CheckRead(board, cut == 0 ? 2 : 1);
        }

        board.SlotLengths[First + cut] = whole;
        CheckRead(board, 2);
    }

    [TestMethod]
    [DataRow(0)]
    [DataRow(1)]
    public void ASlotWithAnyOneBitWrongDoesNotTakeTheOtherWithIt(int broken)
    {
        FakeBoard board = Written();
        byte[] bytes = board.SlotBytes[First + broken];
        for (int bit = 0; bit < 8 * board.SlotLengths[First + broken]; bit++)
        {
            bytes[bit / 8] ^= (byte)(1 << (bit % 8));
            Assert.IsTrue(CheckRead(board, broken == 0 ? 2 : 1).HasTornSlot);
            bytes[bit / 8] ^= (byte)(1 << (bit % 8));
        }
    }

    [TestMethod]
    public void ATornSlotIsTheNextToBeWritten()
    {
        FakeBoard board = Written();
        board.SlotLengths[First + 1] = 9;
        Write(board, 55);
        Assert.AreEqual(3, board.SlotWrites[First + 1]);
        CheckRead(board, 55);
        board.SlotLengths[First + 1] = 0;
        CheckRead(board, 1);
    }

    [TestMethod]
    public void TwoTornSlotsAreLostAndTheNextWriteIsRead()
    {
        FakeBoard board = Written();
        board.SlotLengths[First]--;
        board.SlotBytes[First + 1][12] ^= 1;
        SlotPair pair = New(board);
        Assert.IsFalse(pair.Read(Layout));
        Assert.IsTrue(pair.HasTornSlot);
        Write(board, 77);
        CheckRead(board, 77);
    }

    [TestMethod]
    public void TheSequenceNumberMayWrap()
    {
        FakeBoard board = new FakeBoard();
        Write(board, 0);
        Renumber(board, First, 0x7FFFFFFE);
        for (int i = 1; i < 5; i++)
        {
            Write(board, i);
            CheckRead(board, i);
        }

        // From there the numbers are negative, and wrap a second time at -1.
        Renumber(board, First, -2);
        Renumber(board, First + 1, -3);
        for (int i = 5; i < 9; i++)
        {
            Write(board, i);
            CheckRead(board, i);
        }
    }

    // As when the flash fails for a moment while the board comes up, and is whole again later.
    [TestMethod]
    public void WhatCouldNotBeReadDoesNotComeBackAfterAWrite()
    {
        FakeBoard board = Written();
        SlotPair pair = New(board);
        board.SlotsThrow = true;
        Assert.IsFalse(pair.Read(Layout));
        Assert.IsTrue(pair.HasTornSlot);
        board.SlotsThrow = false;
        pair.Buffer[SlotPair.Head] = 99;
        Assert.IsTrue(pair.Write(Layout, 1));
        SlotPair again = New(board);
        Assert.IsTrue(again.Read(Layout));
        Assert.AreEqual(1, again.Length);
        Assert.AreEqual(99, (int)again.Buffer[SlotPair.Head]);
    }

    [TestMethod]
    public void AReadThatFailsOnceCostsNothing()
    {
        for (int good = 0; good < 3; good++)
        {
            FakeBoard board = Written();
            board.SlotReadsBeforeOneThrows = good;
            CheckRead(board, 2);
        }
    }

    // A later version of the firmware has written its own, and then this one was put back.
    [TestMethod]
    [DataRow(0)]
    [DataRow(1)]
    public void ASlotOfAnotherLayoutDoesNotTakeTheOtherWithIt(int foreign)
    {
        FakeBoard board = Written();
        board.SlotBytes[First + foreign][4]++;
        Renumber(board, First + foreign, 1000);
        Assert.IsTrue(CheckRead(board, foreign == 0 ? 2 : 1).HasTornSlot);
        Write(board, 33);
        CheckRead(board, 33);
    }

    [TestMethod]
    public void AWriteThatFailsKeepsTheOldContent()
    {
        FakeBoard board = Written();
        board.SlotWritesThrow = true;
        Assert.IsFalse(Write(board, 88));
        board.SlotWritesThrow = false;
        CheckRead(board, 2);
    }

    [TestMethod]
    public void TheMostContentThatFitsIsReadBack()
    {
        FakeBoard board = new FakeBoard();
        SlotPair pair = New(board);
        pair.Buffer[SlotPair.Head + SlotPair.MostContent - 1] = 42;
        Assert.IsTrue(pair.Write(Layout, SlotPair.MostContent));
        Assert.AreEqual(Slots.Size, board.SlotLengths[First]);
        SlotPair again = New(board);
        Assert.IsTrue(again.Read(Layout));
        Assert.AreEqual(42, (int)again.Buffer[SlotPair.Head + SlotPair.MostContent - 1]);
    }

    // Slot 0 holds 1, slot 1 holds 2 and is the newer.
    private static FakeBoard Written()
    {
        FakeBoard board = new FakeBoard();
        Write(board, 0);
        Write(board, 1);
        Write(board, 2);
        return board;
    }

    private static SlotPair New(FakeBoard board)
    {
        return new SlotPair(new SafeBoard(board), First);
    }

    private static bool Write(FakeBoard board, int content)
    {
        SlotPair pair = New(board);
        pair.Read(Layout);
        for (int i = 0; i < Length; i++)
        {
            pair.Buffer[SlotPair.Head + i] = (byte)(content + i);
        }

        return pair.Write(Layout, Length);
    }

    private static SlotPair CheckRead(FakeBoard board, int content)
    {
        SlotPair pair = New(board);
        Assert.IsTrue(pair.Read(Layout));
        for (int i = 0; i < Length; i++)
        {
            Assert.AreEqual(content + i, (int)pair.Buffer[SlotPair.Head + i]);
        }

        return pair;
    }

    private static void Renumber(FakeBoard board, int slot, int sequence)
    {
        byte[] bytes = board.SlotBytes[slot];
        int end = board.SlotLengths[slot] - 4;
        LittleEndian.Write(bytes, 8, sequence);
        LittleEndian.Write(bytes, end, (int)Crc32.Of(bytes, end));
    }
}
