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
        Feed(statistics, 0, 801, 5);
        Assert.AreEqual(2000, statistics.ASecond);
        Assert.AreEqual(0, statistics.WorstGap);
    }

    [TestMethod]
    public void TheWorstGapIsKept()
    {
        ReadingStatistics statistics = new ReadingStatistics();
        Feed(statistics, 0, 10, 5);
        Feed(statistics, 125000, 10, 5);
        Feed(statistics, 160000, 10, 5);

        // The last bucket before ended at 25 ms, the next would have ended at 27.5 ms and came at 127.5 ms.
        Assert.AreEqual(100000, statistics.WorstGap);
    }

    private static void Feed(ReadingStatistics statistics, long from, int buckets, int readings)
    {
        Bucket bucket = new Bucket();
        bucket.Count = readings;
        for (int i = 1; i <= buckets; i++)
        {
            bucket.EndTime = from + ((long)i * Bucket.Microseconds);
            statistics.Accept(bucket);
        }
    }
}
