using System;
using System.Collections.Generic;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// Here and not on a device for the number of cases. Settings, log, hours, tools and boot record each hold the values of one
// generation; a mix of two is found at once.
[TestClass]
public class PowerCutTests
{
    private const int Empty = 0;
    private const int Torn = -1;

    public TestContext TestContext { get; set; }

    // From every state of the two slots: after every byte, the rest being missing, old, or erased; and between two writes.
    [TestMethod]
    [DataRow(Slots.Settings)]
    [DataRow(Slots.Boot)]
    [DataRow(Slots.Log)]
    [DataRow(Slots.Hours)]
    [DataRow(Slots.Tools)]
    public void APowerCutAfterAnyByteLeavesTheOldOrTheNew(int first)
    {
        int cuts = 0;
        foreach (int[] state in States())
        {
            // The log is long and goes the same way: there only what may be most often.
            if (first == Slots.Log && state[0] + state[1] is not (3 or 0))
            {
                continue;
            }

            SlotKeeper before = SlotKeeper.In(first, state[0], state[1]);
            int old = Math.Max(0, Math.Max(state[0], state[1]));
            Assert.AreEqual(old, before.Read());
            SlotKeeper after = before.Copy();
            after.Write(3);
            SlotKeeper torn = before.Copy();
            foreach (int slot in torn.OrderOfWrites(after))
            {
                byte[] was = torn.Bytes(slot);
                byte[] will = after.Bytes(slot);
                for (int count = 0; count <= will.Length; count++)
                {
                    for (int way = 0; way < 3; way++)
                    {
                        torn.Put(slot, Tear(was, will, count, way));
                        int read = torn.Read();
                        Assert.IsTrue(
                            read == old || read == 3, $"{state[0]}, {state[1]}: {read} after {count} bytes of slot {slot}");
                        cuts++;
                        if (count % 50 == 0)
                        {
                            SlotKeeper next = torn.Copy();
                            next.Write(4);
                            Assert.AreEqual(4, next.Read());
                        }
                    }
                }

                torn.Put(slot, will);
                Assert.AreEqual(3, torn.Read());
            }
        }

        TestContext.WriteLine("{0} cuts", cuts);
    }

    [TestMethod]
    [DataRow(Slots.Settings)]
    [DataRow(Slots.Boot)]
    [DataRow(Slots.Log)]
    [DataRow(Slots.Hours)]
    [DataRow(Slots.Tools)]
    public void AnyBitThatFlipsLeavesTheOtherSlot(int first)
    {
        int flips = 0;
        foreach (int[] state in new[] { new[] { 1, 2 }, new[] { 2, 1 }, new[] { 1, Empty }, new[] { Empty, 1 } })
        {
            if (first == Slots.Log && state[0] != 1)
            {
                continue;
            }

            SlotKeeper keeper = SlotKeeper.In(first, state[0], state[1]);
            for (int slot = 0; slot < 2; slot++)
            {
                byte[] bytes = keeper.Bytes(slot);
                for (int bit = 0; bit < 8 * bytes.Length; bit++)
                {
                    bytes[bit / 8] ^= (byte)(1 << (bit % 8));
                    keeper.Put(slot, bytes);
                    Assert.AreEqual(state[1 - slot], keeper.Read());
                    bytes[bit / 8] ^= (byte)(1 << (bit % 8));
                    flips++;
                }

                keeper.Put(slot, bytes);
            }
        }

        TestContext.WriteLine("{0} bits", flips);
    }

    // A later version of the same layout has more at the end; one of another layout is not understood.
    [TestMethod]
    [DataRow(Slots.Boot)]
    [DataRow(Slots.Hours)]
    [DataRow(Slots.Tools)]
    public void ALongerSlotOfTheSameLayoutIsRead(int first)
    {
        SlotKeeper keeper = SlotKeeper.In(first, 2, 1);
        keeper.Put(0, SlotKeeper.Framed(keeper.Bytes(0), 1, 8));
        Assert.AreEqual(2, keeper.Read());
    }

    [TestMethod]
    [DataRow(Slots.Settings)]
    [DataRow(Slots.Boot)]
    [DataRow(Slots.Log)]
    [DataRow(Slots.Hours)]
    [DataRow(Slots.Tools)]
    public void AnotherLayoutIsLeftAloneAndTheOtherSlotIsRead(int first)
    {
        for (int version = 0; version < 5; version++)
        {
            SlotKeeper keeper = SlotKeeper.In(first, 2, 1);
            keeper.Put(0, SlotKeeper.Framed(keeper.Bytes(0), version, 0));
            Assert.AreEqual(version == 1 ? 2 : 1, keeper.Read());
            keeper.Write(3);
            Assert.AreEqual(3, keeper.Read());
        }
    }

    [TestMethod]
    [DataRow(Slots.Settings)]
    [DataRow(Slots.Boot)]
    [DataRow(Slots.Log)]
    [DataRow(Slots.Hours)]
    [DataRow(Slots.Tools)]
    public void AFullFlashKeepsTheOldAndTakesTheNextOnceThereIsRoom(int first)
    {
        foreach (int[] state in States())
        {
            SlotKeeper keeper = SlotKeeper.In(first, state[0], state[1]);
            int old = keeper.Read();
            keeper.IsFull = true;
            Assert.IsFalse(keeper.Write(3));
            keeper.IsFull = false;
            Assert.AreEqual(old, keeper.Read());
            Assert.IsTrue(keeper.Write(4));
            Assert.AreEqual(4, keeper.Read());
        }
    }

    private static IEnumerable<int[]> States()
    {
        foreach (int a in new[] { Empty, Torn, 1, 2 })
        {
            foreach (int b in new[] { Empty, Torn, 1, 2 })
            {
                if (a != b || a <= 0)
                {
                    yield return new[] { a, b };
                }
            }
        }
    }

    private static byte[] Tear(byte[] was, byte[] will, int count, int way)
    {
        int length = way == 0 ? count : way == 1 ? Math.Max(count, was.Length) : will.Length;
        byte[] torn = new byte[length];
        for (int i = 0; i < length; i++)
        {
            torn[i] = i < count ? will[i] : way == 1 ? was[i] : (byte)0xFF;
        }

        return torn;
    }
}
