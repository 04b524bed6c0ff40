using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// What a board may do to the switch at a bad moment, and what the switch may not do to the relay.
[TestClass]
public class BoardTroubleTests
{
    private const int NoTool = SwitchBench.NoTool;
    private const int Saw = SwitchBench.Saw;

    // A write stalls the heartbeat.
    [TestMethod]
    public void TheBootRecordWaitsUntilTheRelayIsOpen()
    {
        SwitchBench bench = On();
        int writes = BootWrites(bench);
        bench.Switch.Boot.IsWriteWaiting = true;
        bench.Run(5000);
        Assert.AreEqual(writes, BootWrites(bench));
        bench.Tool(NoTool, 6000);
        Assert.AreEqual(writes + 1, BootWrites(bench));
        Assert.AreEqual(0, bench.Board.WritesWithLineHigh);
    }

    // Where the line would stay high, the driver would hold the relay for twice as long.
    [TestMethod]
    public void BeforeARestartTheLineRestsAndThenFlashIsWritten()
    {
        SwitchBench bench = On();
        while (!bench.Board.RelayLine)
        {
            bench.Switch.Step();
        }

        int writes = BootWrites(bench);
        bench.Board.NowThrows = true;
        bench.Switch.Step();
        Assert.IsTrue(bench.Board.HasRestarted);
        Assert.AreEqual(writes + 1, BootWrites(bench));
        Assert.AreEqual(0, bench.Board.WritesWithLineHigh);
    }

    [TestMethod]
    public void EveryLockoutComesBackAfterARestart()
    {
        SwitchBench bench = new SwitchBench();
        string before = "";
        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            if (FaultTable.Has((Fault)i, FaultTraits.OutlivesRestart))
            {
                bench.Switch.Core.Faults.Recall((Fault)i, bench.Switch.Now);
                before += i + " ";
            }
        }

        bench.Answer("restart");
        bench.Answer("yes");
        bench.Boot();
        string after = "";
        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            after += bench.Switch.Core.Faults[(Fault)i].IsLatched ? i + " " : "";
        }

        Assert.AreEqual(before, after);
    }

    // More than there is room for, and less than nothing.
    [TestMethod]
    [DataRow(100000)]
    [DataRow(-100000)]
    public void ASerialLineThatMiscountsDoesNotTouchTheVacuum(int claimed)
    {
        byte[] buffer = new byte[16];
        FakeBoard board = new FakeBoard();
        board.ClaimedSerial = claimed;
        Assert.AreEqual(claimed < 0 ? 0 : buffer.Length, new SafeBoard(board).ReadSerial(buffer));
        SwitchBench bench = On();
        bench.Board.ClaimedSerial = claimed;
        bench.Run(1000);
        Assert.AreEqual(0, bench.Board.Restarts);
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
    }

    [TestMethod]
    [DataRow(5000)]
    [DataRow(1000000)]
    public void AClockThatGoesBackRestartsTheBoardAtOnce(int microseconds)
    {
        SwitchBench bench = On();
        bench.Board.BackwardBy = microseconds;
        bench.Switch.Step();
        Assert.IsTrue(bench.Board.HasRestarted);
        bench.Boot();
        Assert.AreEqual((int)BootReason.ClockStood, (int)bench.Switch.Boot.Reason);
    }

    // Nobody expects the vacuum at the end of a lesson: a tool that still runs must stop first.
    [TestMethod]
    public void AfterTeachingARunningToolDoesNotStartTheVacuum()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("teach");
        bench.Answer("yes");
        bench.Tool(NoTool, 6000);
        bench.Tool(Saw, 4000);
        Assert.IsTrue(bench.Switch.Console.IsGuiding);
        bench.Answer("");
        Assert.IsFalse(bench.Switch.Console.IsGuiding);
        int toggles = bench.Board.Toggles;
        bench.Run(5000);
        Assert.AreEqual("until-stop", Words.Of(bench.State));
        Assert.AreEqual(toggles, bench.Board.Toggles);
        bench.Tool(NoTool, 2000);
        bench.Tool(Saw, 2000);
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
    }

    private static SwitchBench On()
    {
        SwitchBench bench = new SwitchBench();
        bench.Tool(Saw, 2000);
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
        return bench;
    }

    private static int BootWrites(SwitchBench bench)
    {
        return bench.Board.SlotWrites[Slots.Boot] + bench.Board.SlotWrites[Slots.Boot + 1];
    }
}
