using System;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// Here and not on a device for the number of cases: a person holds the vacuum off, the flash fails at a write before or after
// that, in this way or another, and the power goes. A hold is never lost without a word.
[TestClass]
public class HoldCutTests
{
    private const string Word = "This hold will not outlive a power cut: the flash failed.";

    // A record, its frame, and nothing written at all.
    private const int MostBytes = 12 + 21 + 4;

    public TestContext TestContext { get; set; }

    // The write of the hold is cut after each byte, and leaves so much of it; the one before (at power-up) may have gone the same
    // way, or the flash went on failing afterwards, or was read badly when the power came back.
    [TestMethod]
    public void AHoldIsNeverLostWithoutAWord()
    {
        int cases = 0;
        int told = 0;
        int kept = 0;
        for (int bytes = -1; bytes <= MostBytes; bytes++)
        {
            for (int way = 0; way < 16; way++)
            {
                foreach (int milliseconds in new[] { 0, 30, 300, 900, 1500, 20000 })
                {
                    string what = $"{bytes} bytes, way {way}, cut after {milliseconds} ms";
                    SwitchBench bench = Held(bytes, way, out string said);
                    said += Wait(bench, milliseconds);
                    bool wasTold = said.Contains(Word);
                    bool isTried = bench.Board.WritesThatTear == 0 || milliseconds > 0;
                    Reboot(bench, readsBadly: (way & 8) != 0);
                    bool isHeld = Words.Of(bench.State) == "held";

                    // At the very moment of the first try nobody can have said anything yet.
                    bool isAtOnce = milliseconds < 300 && bytes < 0;
                    Assert.IsTrue(isHeld || wasTold || isAtOnce || !isTried, $"{what}: {said}");
                    cases++;
                    told += wasTold ? 1 : 0;
                    kept += isHeld ? 1 : 0;
                }
            }
        }

        TestContext.WriteLine($"{cases} cases; {told} were told that it is at risk, {kept} were held afterwards");
        Assert.IsGreaterThan(cases / 2, kept);
        Assert.IsGreaterThan(cases / 20, told);
    }

    // The other way round: after "auto" the vacuum may be held in doubt, but a hold that nobody made is not claimed.
    [TestMethod]
    public void ACutWhileAHoldEndsLeavesItHeldOrNot()
    {
        int held = 0;
        for (int bytes = -1; bytes <= MostBytes; bytes++)
        {
            SwitchBench bench = new SwitchBench();
            bench.Answer("hold");
            bench.Board.WritesThatTear = 1;
            bench.Board.TornBytes = bytes;
            bench.Board.Type("vacuum auto\r");
            while (bench.Board.WritesThatTear > 0)
            {
                bench.Switch.Step();
            }

            bench.Board.IsDark = true;
            Reboot(bench, readsBadly: false);
            string state = Words.Of(bench.State);
            Assert.AreEqual(bytes == MostBytes ? "idle" : "held", state, $"{bytes} bytes");
            held += state == "held" ? 1 : 0;
        }

        Assert.AreEqual(MostBytes + 1, held);
    }

    // Bits of the way: the torn write throws or claims that it is done; the write at power-up was torn as well; flash goes on
    // failing; the next power-up cannot read.
    private static SwitchBench Held(int bytes, int way, out string said)
    {
        SwitchBench bench = new SwitchBench();
        bench.Boot();
        FakeBoard board = bench.Board;
        board.TornBytes = bytes;
        board.TornWritesThrow = (way & 1) != 0;
        if ((way & 2) != 0)
        {
            board.WritesThatTear = 1;
            bench.Boot();
            bench.Answer("vacuum auto");
            bench.Run(1500);
        }

        board.WritesThatTear = (way & 4) != 0 ? 1000 : 1;
        int tries = board.SlotTries;
        board.TakeSent();
        board.Type("hold\r");
        while (board.SlotTries == tries)
        {
            bench.Switch.Step();
        }

        said = board.TakeSent();
        return bench;
    }

    private static string Wait(SwitchBench bench, int milliseconds)
    {
        bench.Run(milliseconds);
        bench.Board.IsDark = true;
        return bench.Board.TakeSent();
    }

    private static void Reboot(SwitchBench bench, bool readsBadly)
    {
        bench.Board.WritesThatTear = 0;
        bench.Board.SlotReadsBeforeOneThrows = -1;
        bench.Board.SlotsThrow = readsBadly;
        bench.Boot();
        bench.Board.SlotsThrow = false;
    }
}
