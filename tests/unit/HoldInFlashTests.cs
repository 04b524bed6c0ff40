using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// A hold that flash does not keep, and a boot record that cannot be read: the whole firmware at a board whose flash fails.
[TestClass]
public class HoldInFlashTests
{
    private const string AtRisk = "will not outlive a power cut: the flash failed";
    private const string InDoubt = "held, told off until 'vacuum auto' or a long press: flash cannot say whether it was held";

    // A write that throws, one that claims to be done and is not, and one that is torn.
    [TestMethod]
    [DataRow(-1, true)]
    [DataRow(-1, false)]
    [DataRow(20, true)]
    [DataRow(20, false)]
    public void AHoldWhoseWriteFailedIsWrittenAgainAndOutlivesAPowerCut(int bytes, bool isThrown)
    {
        SwitchBench bench = new SwitchBench();
        Tear(bench, 1, bytes, isThrown);
        bench.Answer("hold");
        Assert.AreEqual(1, bench.Switch.Safe.FlashTroubles);
        bench.Run(1000);
        bench.Boot();
        Assert.AreEqual("held", Words.Of(bench.State));
        Assert.IsFalse(Texts.Has(bench.Answer("why"), InDoubt));
    }

    [TestMethod]
    public void AHoldThatFlashDoesNotKeepIsToldAsLongAsItIsSo()
    {
        SwitchBench bench = new SwitchBench();
        Tear(bench, 1000, -1, false);
        bench.Board.Beeps = 0;
        Assert.IsTrue(Texts.Has(bench.Answer("hold"), "This hold " + AtRisk + "."));
        bench.Run(2000);
        Assert.AreEqual(5, bench.Board.Beeps);
        for (int i = 0; i < 2; i++)
        {
            bench.Board.TakeSent();
            bench.Run(130000);
            Assert.AreEqual("", bench.Board.TakeSent());
            Assert.AreEqual("held, told off until 'vacuum auto' or a long press; " + AtRisk, bench.Answer("why"));
            Assert.IsTrue(Texts.Has(bench.Answer("status"), "long press; " + AtRisk));
        }

        Assert.AreEqual(5, bench.Board.Beeps);
        bench.Board.WritesThatTear = 0;
        bench.Run(61000);
        Assert.IsFalse(Texts.Has(bench.Answer("why"), AtRisk));
        bench.Boot();
        Assert.AreEqual("held", Words.Of(bench.State));
    }

    // The word waits until nobody types; it does not get lost.
    [TestMethod]
    public void WhoTypesMeanwhileIsToldAfterwards()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.SlotWritesThrow = true;
        bench.Board.Type("hold\rwh");
        bench.Run(1000);
        Assert.IsFalse(Texts.Has(bench.Board.TakeSent(), AtRisk));
        bench.Board.Type("\u0008\u0008");
        bench.Run(500);
        Assert.IsTrue(Texts.Has(bench.Board.TakeSent(), "This hold " + AtRisk + "."));
    }

    // Of ten minutes: at once, after 1 s, after 10 s, and then nine times. The log has its own two.
    [TestMethod]
    public void AFlashThatFailsForGoodIsTriedOnceAMinute()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(70000);
        bench.Board.SlotWritesThrow = true;
        int tries = bench.Board.SlotTries;
        bench.Answer("hold");
        bench.Run(600000);
        Assert.AreEqual(12 + 2, bench.Board.SlotTries - tries);
    }

    // The old hold is still in flash, or what is there is torn: either way it is held.
    [TestMethod]
    public void AHoldThatFlashHasAlreadyIsNotAtRisk()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("hold");
        bench.Board.SlotWritesThrow = true;
        bench.Boot();
        Assert.AreEqual("held", Words.Of(bench.State));
        Assert.IsFalse(Texts.Has(bench.Answer("why"), AtRisk));
    }

    // The release reached flash and could not be read back; then nothing more reaches it. Flash says that nobody holds.
    [TestMethod]
    public void AHoldAfterAReleaseThatMayBeInFlashIsAtRisk()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("hold");
        bench.Board.SlotReadsBeforeOneThrows = 0;
        bench.Answer("vacuum auto");
        bench.Board.SlotWritesThrow = true;
        bench.Answer("hold");
        Assert.AreEqual("held, told off until 'vacuum auto' or a long press; " + AtRisk, bench.Answer("why"));
        bench.Boot();
        Assert.AreEqual("idle", Words.Of(bench.State));
    }

    // Both copies unreadable, torn, or of another version; the reads throw; one copy torn, emptied or of another version.
    [TestMethod]
    [DataRow("throw")]
    [DataRow("tear 0")]
    [DataRow("tear 1")]
    [DataRow("tear 0 1")]
    [DataRow("empty 0")]
    [DataRow("empty 1")]
    [DataRow("version 0")]
    [DataRow("version 1")]
    [DataRow("version 0 1")]
    public void ABootRecordThatCannotBeReadCountsAsHeldUntilAPersonSaysAuto(string what)
    {
        SwitchBench bench = new SwitchBench();
        bench.Boot();
        Spoil(bench.Board, what);
        bench.Boot();
        bench.Board.SlotsThrow = false;
        Assert.AreEqual("held", Words.Of(bench.State));
        Assert.AreEqual(InDoubt, Plain(bench.Answer("why")));
        Assert.IsTrue(Texts.Has(bench.Answer("events"), "the boot record cannot be read, so the vacuum is held"));
        bench.Tool(SwitchBench.Saw, 3000);
        Assert.IsFalse(bench.Switch.Core.IsRelayClosed);
        bench.Tool(SwitchBench.NoTool, 60000);

        // Also the next time, and until a person ends it or makes it a hold of theirs.
        bench.Boot();
        Assert.AreEqual(InDoubt, Plain(bench.Answer("why")));
        Assert.AreEqual(1, bench.Logged(LogKind.HoldInDoubt));
        Assert.AreEqual(
            "held, told off until 'vacuum auto' or a long press\r\nHeld, not isolated: unplug before you reach in.",
            bench.Answer("hold"));
        bench.Boot();
        Assert.AreEqual("held, told off until 'vacuum auto' or a long press", bench.Answer("why"));
        bench.Answer("vacuum auto");
        bench.Boot();
        Assert.AreEqual("idle", Words.Of(bench.State));
    }

    [TestMethod]
    public void ANewBoxIsNotHeldUnlessItsFlashFails()
    {
        SwitchBench bench = new SwitchBench();
        Assert.AreEqual("idle", Words.Of(bench.State));
        for (int i = 0; i < Slots.Count; i++)
        {
            bench.Board.SlotLengths[i] = 0;
        }

        // As when the device's library says of a file that it is not there, because the flash does not answer.
        bench.Board.SlotWritesThrow = true;
        bench.Boot();
        Assert.AreEqual("held", Words.Of(bench.State));
        Assert.IsTrue(Texts.Has(bench.Answer("why"), InDoubt));
    }

    private static string Plain(string why)
    {
        int end = why.IndexOf(";");
        return end < 0 ? why : why.Substring(0, end);
    }

    private static void Tear(SwitchBench bench, int writes, int bytes, bool isThrown)
    {
        bench.Board.WritesThatTear = writes;
        bench.Board.TornBytes = bytes;
        bench.Board.TornWritesThrow = isThrown;
    }

    private static void Spoil(FakeBoard board, string what)
    {
        board.SlotsThrow = what == "throw";
        for (int i = 0; i < 2; i++)
        {
            int slot = Slots.Boot + i;
            if (!Texts.Has(what, i.ToString()))
            {
                continue;
            }

            if (what[0] == 'v')
            {
                byte[] bytes = board.SlotBytes[slot];
                int end = board.SlotLengths[slot] - 4;
                bytes[4]++;
                LittleEndian.Write(bytes, end, (int)Crc32.Of(bytes, end));
            }
            else
            {
                board.SlotLengths[slot] = what[0] == 'e' ? 0 : 20;
            }
        }
    }
}
