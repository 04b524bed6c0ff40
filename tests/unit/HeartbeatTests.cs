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
        for (int i = 1; i <= 100; i++)
        {
            heartbeat.Update(true, 1000000 + (i * 2500L));
            Assert.AreEqual(i, board.Toggles);
        }
    }

    [TestMethod]
    public void WhenItShouldOpenTheLineRestsLow()
    {
        FakeBoard board = new FakeBoard();
        Heartbeat heartbeat = new Heartbeat(board);
        heartbeat.Update(true, 1002500);
        Assert.IsTrue(board.RelayLine);
        heartbeat.Update(false, 1005000);
        Assert.IsFalse(board.RelayLine);
        int toggles = board.Toggles;
        heartbeat.Update(false, 1007500);
        Assert.AreEqual(toggles, board.Toggles);
    }

    // A gap that the driver bridges does not matter.
    [TestMethod]
    [DataRow(150000, 0, 2)]
    [DataRow(150001, 150, 2)]
    public void AfterALongGapTheRelayIsTakenForDropped(int gap, int lostFor, int toggles)
    {
        FakeBoard board = new FakeBoard();
        Heartbeat heartbeat = new Heartbeat(board);
        Assert.AreEqual(0, heartbeat.Update(true, 1000000));
        Assert.IsTrue(board.RelayLine);
        Assert.AreEqual(lostFor, heartbeat.Update(true, 1000000 + gap));
        Assert.AreEqual(toggles, board.Toggles);
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
}
