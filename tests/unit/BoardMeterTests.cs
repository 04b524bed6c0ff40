using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class BoardMeterTests
{
    [TestMethod]
    [DataRow(0, 0)]
    [DataRow(1, 0)]
    [DataRow(5, 10)]
    public void TheLoopAddsUp(int rounds, int sum)
    {
        Assert.AreEqual(sum, BoardMeter.Loop(rounds));
    }

    [TestMethod]
    [DataRow(false, 0)]
    [DataRow(true, -1)]
    public void AWriteThatFailsHasNoTime(bool fails, int milliseconds)
    {
        FakeBoard board = new FakeBoard();
        SafeBoard safe = new SafeBoard(board);
        BootRecord boot = new BootRecord(safe);
        boot.Begin();
        board.SlotWritesThrow = fails;
        BoardMeter meter = new BoardMeter(board, safe, boot);
        meter.Measure();
        Assert.AreEqual(milliseconds, meter.WriteMilliseconds);

        // The pretended board reads every half millisecond, and its work takes no time.
        Assert.AreEqual(0, meter.InstructionNanoseconds);
        Assert.AreEqual(ToolLine.ReadingMicroseconds, meter.ConversionMicroseconds);
    }
}
