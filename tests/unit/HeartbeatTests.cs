using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class HeartbeatTests
{
    [TestMethod]
    public void AtBootTheLineRestsLow()
    {
        FakeBoard board = new FakeBoard();
        board.RelayLine = true;
        Heartbeat heartbeat = new Heartbeat(board);
        Assert.IsFalse(board.RelayLine);
        Assert.IsNotNull(heartbeat);
    }

    [TestMethod]
    public void WhileTheRelayShouldBeClosedTheLineTogglesAtEveryStep()
    {
        FakeBoard board = new FakeBoard();
        Heartbeat heartbeat = new Heartbeat(board);
        DetectionCore core = On();
        for (int i = 1; i <= 100; i++)
        {
            heartbeat.Update(core.IsRelayClosed, 1000000 + (i * 2500L));
            Assert.AreEqual(i, board.Toggles);
        }
    }

    [TestMethod]
    public void WhenItShouldOpenTheLineRestsLow()
    {
        FakeBoard board = new FakeBoard();
        Heartbeat heartbeat = new Heartbeat(board);
        DetectionCore core = On();
        heartbeat.Update(core.IsRelayClosed, 1002500);
        Assert.IsTrue(board.RelayLine);
        core.Handle(VacuumEvent.HandOff, 1002500);
        heartbeat.Update(core.IsRelayClosed, 1005000);
        Assert.IsFalse(board.RelayLine);
        int toggles = board.Toggles;
        heartbeat.Update(core.IsRelayClosed, 1007500);
        Assert.AreEqual(toggles, board.Toggles);
    }

    [TestMethod]
    public void AGapThatTheDriverBridgesDoesNotMatter()
    {
        FakeBoard board = new FakeBoard();
        Heartbeat heartbeat = new Heartbeat(board);
        DetectionCore core = On();
        Assert.AreEqual(0, heartbeat.Update(core.IsRelayClosed, 1000000));
        Assert.AreEqual(0, heartbeat.Update(core.IsRelayClosed, 1150000));
        Assert.AreEqual(2, board.Toggles);
    }

    [TestMethod]
    public void AfterALongerGapTheRelayIsTakenForDropped()
    {
        FakeBoard board = new FakeBoard();
        Heartbeat heartbeat = new Heartbeat(board);
        DetectionCore core = On();
        Assert.AreEqual(0, heartbeat.Update(core.IsRelayClosed, 1000000));
        Assert.IsTrue(board.RelayLine);
        Assert.AreEqual(150, heartbeat.Update(core.IsRelayClosed, 1150001));
        Assert.IsFalse(board.RelayLine);
    }

    // 25 and 50 days in milliseconds do not fit into 32 bits; the second is 0 in them.
    [TestMethod]
    [DataRow(2147483648L)]
    [DataRow(4294967296L)]
    public void AfterAGapOfWeeksToo(long milliseconds)
    {
        FakeBoard board = new FakeBoard();
        Heartbeat heartbeat = new Heartbeat(board);
        Assert.AreEqual(0, heartbeat.Update(true, 0));
        Assert.AreEqual(int.MaxValue, heartbeat.Update(true, milliseconds * 1000));
        Assert.IsFalse(board.RelayLine);
    }

    // On by hand, at one second.
    private static DetectionCore On()
    {
        DetectionCore core = new DetectionCore(new ConverterScale(4095, 806, 850, 1750), CoreBench.Settings(), 0);
        core.Handle(VacuumEvent.HandOn, 1000000);
        Assert.IsTrue(core.IsRelayClosed);
        return core;
    }
}
