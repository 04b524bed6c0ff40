using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class ReadingStatisticsTests
{
    [TestMethod]
    public void ReadingsAreCountedOverASecond()
    {
        ReadingStatistics statistics = new ReadingStatistics();
        statistics.Count = 1900;
        statistics.Update(990000);
        Assert.AreEqual(0, statistics.ASecond);
        statistics.Count += 110;
        statistics.Update(1005000);
        Assert.AreEqual(2000, statistics.ASecond);
        Assert.AreEqual(0, statistics.Count);
    }

    [TestMethod]
    public void TheWorstGapIsKept()
    {
        ReadingStatistics statistics = new ReadingStatistics();
        statistics.NoteGap(100000);
        statistics.NoteGap(10000);
        statistics.NoteGap(-500);
        Assert.AreEqual(100000, statistics.WorstGapMicroseconds);
        statistics.NoteGap(long.MaxValue);
        Assert.AreEqual(int.MaxValue, statistics.WorstGapMicroseconds);
    }

    // In a bucket and from one to the next; also if all counts are even, by chance or because the lowest bit is dead.
    [TestMethod]
    [DataRow(1000, 1000, 1000, 1000, 0)]
    [DataRow(1000, 1001, 1000, 1001, 1)]
    [DataRow(1000, 1002, 1000, 1002, 1)]
    [DataRow(1000, 1000, 1003, 1003, 2)]
    [DataRow(1000, 1002, 1004, 1004, 2)]
    public void TheBitsThatMoveAreCounted(int least, int greatest, int nextLeast, int nextGreatest, int bits)
    {
        ReadingStatistics statistics = new ReadingStatistics();
        statistics.StartSpread();
        statistics.NoteSpread(Spread(least, greatest));
        statistics.NoteSpread(Spread(nextLeast, nextGreatest));
        Assert.AreEqual(bits, statistics.MovingBits);
        statistics.StartSpread();
        Assert.AreEqual(0, statistics.MovingBits);
    }

    private static Bucket Spread(int least, int greatest)
    {
        Bucket bucket = new Bucket();
        bucket.Count = 5;
        bucket.Least = least;
        bucket.Greatest = greatest;
        return bucket;
    }
}
