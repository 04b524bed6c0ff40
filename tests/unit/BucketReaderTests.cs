using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class BucketReaderTests
{
    private const int ABucket = Bucket.Microseconds / ToolLine.ReadingMicroseconds;

    [TestMethod]
    public void AsManyReadingsAreSureAsTheLastBucketHadLessAFew()
    {
        FakeBoard board = new FakeBoard();
        BucketReader reader = new BucketReader(board, new ReadingStatistics());
        for (int i = 0; i < 10; i++)
        {
            Assert.IsTrue(reader.Read() == BucketRead.Done);
        }

        Assert.AreEqual(ABucket - 4, board.MostSure);
        Assert.AreEqual(ABucket, reader.Bucket.Count);
    }

    [TestMethod]
    public void AfterAStallNothingIsSure()
    {
        FakeBoard board = new FakeBoard();
        BucketReader reader = new BucketReader(board, new ReadingStatistics());
        reader.Read();
        reader.Read();
        board.Stall = 20000;
        reader.Read();
        board.MostSure = 0;
        reader.Read();
        Assert.AreEqual(0, board.MostSure);
    }

    [TestMethod]
    public void ABucketThatIsClosedAtOnceHasNoReadingsOfTheNextOne()
    {
        FakeBoard board = new FakeBoard();
        BucketReader reader = new BucketReader(board, new ReadingStatistics());
        for (int i = 0; i < 5; i++)
        {
            reader.Read();
        }

        reader.ClosesAtOnce = true;
        for (int i = 0; i < 5; i++)
        {
            reader.Read();
            Assert.AreEqual(board.Time, reader.Bucket.EndTime);
        }

        Assert.AreEqual(ABucket, reader.Bucket.Count);
    }
}
