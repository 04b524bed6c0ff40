using NanoDustSwitch.Esp32;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.BoardTests;

[TestClass]
public class SlotFilesTests : BoardTest
{
    private readonly byte[] _buffer = new byte[Slots.Size];

    [TestInitialize]
    public void TheChipIsHere() => Chip.Enter();

    [TestMethod]
    public void ASlotThatWasNeverWrittenHasNothing()
    {
        Assert.AreEqual(0, new SlotFiles().Read(3, _buffer));
        Assert.IsEmpty(Chip.Files);
    }

    [TestMethod]
    public void WithoutADriveNothingIsKnownOfASlot()
    {
        Chip.Break("File.Exists");
        Chip.Break("Directory.Exists");
        SlotFiles slots = new();
        Assert.IsFalse(slots.IsMounted());
        Assert.ThrowsExactly<InvalidOperationException>(() => slots.Read(3, _buffer));
    }

    [TestMethod]
    [DataRow(1)]
    [DataRow(100)]
    [DataRow(101)]
    [DataRow(1024)]
    public void WhatIsWrittenIsRead(int count)
    {
        byte[] written = new byte[Slots.Size];
        Random.Shared.NextBytes(written);
        SlotFiles slots = new();
        slots.Write(0, new byte[Slots.Size], Slots.Size);
        slots.Write(0, written, count);
        Assert.AreEqual(count, slots.Read(0, _buffer));
        CollectionAssert.AreEqual(written[..count], _buffer[..count]);
    }

    [TestMethod]
    public void EverySlotHasAFileOfItsOwn()
    {
        SlotFiles slots = new();
        for (int i = 0; i < Slots.Count; i++)
        {
            slots.Write(i, new[] { (byte)i }, 1);
        }

        Assert.HasCount(Slots.Count, Chip.Files);
        for (int i = 0; i < Slots.Count; i++)
        {
            slots.Read(i, _buffer);
            Assert.AreEqual(i, _buffer[0]);
        }
    }

    // The flash also has files of the device itself.
    [TestMethod]
    public void TheFilesAreOnTheFlashAndTheirNamesAreOurOwn()
    {
        SlotFiles slots = new();
        for (int i = 0; i < Slots.Count; i++)
        {
            slots.Write(i, _buffer, 1);
        }

        foreach (string path in Chip.Files.Keys)
        {
            Assert.MatchesRegex(@"^I:\\dust[0-9]\.bin$", path);
        }
    }

    [TestMethod]
    public void AFullFlashIsThrownAndTheOldContentStays()
    {
        SlotFiles slots = new();
        slots.Write(0, new byte[] { 1, 2, 3 }, 3);
        Chip.IsFlashFull = true;
        Assert.ThrowsExactly<IOException>(() => slots.Write(0, _buffer, Slots.Size));
        Assert.AreEqual(3, slots.Read(0, _buffer));
    }

    [TestMethod]
    public void AWriteThatFailsDoesNotLeaveTheFileOpen()
    {
        SlotFiles slots = new();
        Chip.Break("FileStream.Write", 1);
        Assert.ThrowsExactly<InvalidOperationException>(() => slots.Write(0, _buffer, Slots.Size));
        slots.Write(0, _buffer, Slots.Size);
    }
}
