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
        Assert.AreEqual(100000, statistics.WorstGap);
        statistics.NoteGap(long.MaxValue);
        Assert.AreEqual(int.MaxValue, statistics.WorstGap);
    }
}
