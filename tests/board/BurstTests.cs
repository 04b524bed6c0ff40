using NanoDustSwitch.Esp32;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.BoardTests;

[TestClass]
public class BurstTests : BoardTest
{
    private const int NotRead = -7;

    private readonly int[] _readings = new int[64];

    [TestInitialize]
    public void NothingIsReadYet()
    {
        Chip.Enter();
        Array.Fill(_readings, NotRead);
    }

    [TestMethod]
    public void ABurstReadsUntilItsTime()
    {
        Esp32Board board = new();
        long end = board.Now + 2500;
        int count = board.ReadBurst(_readings, 0, 0, end);
        Assert.AreEqual(26, count);
        Assert.IsInRange(end, end + 201, Chip.Clock);
        for (int i = 0; i < count; i++)
        {
            Assert.IsInRange(ToolWave.Rest - 1, ToolWave.Rest + 1, _readings[i]);
        }

        Assert.AreEqual(NotRead, _readings[count]);
    }

    [TestMethod]
    public void ABurstGoesOnWhereTheLastOneEnded()
    {
        Esp32Board board = new();
        int count = board.ReadBurst(_readings, 10, 0, board.Now + 500);
        Assert.AreEqual(16, count);
        Assert.AreEqual(NotRead, _readings[9]);
        Assert.AreNotEqual(NotRead, _readings[10]);
    }

    [TestMethod]
    public void AfterItsTimeThereIsNothingToRead()
    {
        Esp32Board board = new();
        Assert.AreEqual(5, board.ReadBurst(_readings, 5, 0, board.Now - 1));
        Assert.AreEqual(NotRead, _readings[5]);
    }

    [TestMethod]
    public void AFullArrayEndsTheBurst()
    {
        Esp32Board board = new();
        Assert.AreEqual(64, board.ReadBurst(_readings, 60, 0, board.Now + 1000000));
        Assert.AreEqual(63, board.ReadBurst(_readings, 63, 0, board.Now + 1000000));
        Assert.AreEqual(64, board.ReadBurst(_readings, 64, 0, board.Now + 1000000));
    }

    [TestMethod]
    public void AClockThatStandsDoesNotHoldTheBurstForEver()
    {
        Esp32Board board = new();
        Chip.StopClock();
        Assert.AreEqual(64, board.ReadBurst(_readings, 0, 0, board.Now + 2500));
    }

    [TestMethod]
    public void TwoReadingsTakeThreeCallsOfTheLibraries()
    {
        Esp32Board board = new();
        Chip.Calls.Clear();
        int count = board.ReadBurst(_readings, 0, 0, board.Now + 2500);

        // One look at the clock for the time above, and one that ends the burst.
        Assert.HasCount((3 * count / 2) + 2, Chip.Calls);
    }

    [TestMethod]
    public void TheClockIsNotLookedAtForWhatSurelyFitsIn()
    {
        Esp32Board board = new();
        Chip.Calls.Clear();
        Assert.AreEqual(20, board.ReadBurst(_readings, 4, 20, 0));
        Assert.HasCount(16 + 1, Chip.Calls);
    }

    [TestMethod]
    public void AConversionThatFailsIsThrown()
    {
        Esp32Board board = new();
        Chip.Break("ReadValue", 1);
        Assert.ThrowsExactly<InvalidOperationException>(() => board.ReadBurst(_readings, 0, 0, board.Now + 2500));
        Assert.IsGreaterThan(20, board.ReadBurst(_readings, 0, 0, board.Now + 2500));
    }

    [TestMethod]
    [DataRow("new AdcController")]
    [DataRow("OpenChannel 6")]
    public void AConverterThatIsNotThereIsTriedAgainAtEveryBurst(string call)
    {
        Chip.Break(call);
        Esp32Board board = new();
        Assert.IsTrue(board.FailedParts.HasFlag(BoardParts.ToolLine));
        for (int i = 1; i <= 3; i++)
        {
            Chip.Calls.Clear();
            Assert.ThrowsExactly<InvalidOperationException>(() => board.ReadBurst(_readings, 0, 0, board.Now + 2500));
            Assert.Contains(call, Chip.Calls);
        }

        Chip.Mend();
        Assert.IsGreaterThan(20, board.ReadBurst(_readings, 0, 0, board.Now + 2500));
    }

    [TestMethod]
    public void TheVacuumLineIsReadOnce()
    {
        Esp32Board board = new();
        Chip.Calls.Clear();
        Assert.AreEqual(ToolWave.Rest, board.ReadVacuumLine());
        CollectionAssert.AreEqual(new[] { "ReadValue 7" }, Chip.Calls);
    }

    [TestMethod]
    public void AVacuumLineThatIsNotThereIsAFailedRead()
    {
        Chip.Break("OpenChannel 7");
        Esp32Board board = new();
        Assert.AreEqual(BoardParts.VacuumLine, board.FailedParts);
        Assert.AreEqual(-1, board.ReadVacuumLine());
    }
}
