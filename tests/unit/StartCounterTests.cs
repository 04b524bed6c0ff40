using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class StartCounterTests
{
    private const long Second = Time.Second;

    private const int Most = 30;

    // So many starts, so many seconds apart, the first after one such pause; what counts at a second.
    [TestMethod]
    [DataRow(0, 1, 5, 0)]
    [DataRow(1, 10, 69, 1)]
    [DataRow(1, 10, 70, 0)]

    // More starts than it has places for count as the most, and old ones do not hide new ones.
    [DataRow(50, 1, 51, Most)]
    [DataRow(40, 20, 801, 3)]
    public void AStartCountsForItsTime(int starts, int apart, int second, int counted)
    {
        StartCounter counter = new StartCounter(Most, Time.Minute);
        for (int i = 1; i <= starts; i++)
        {
            counter.Add(i * apart * Second);
        }

        Assert.AreEqual(counted, counter.Recent(second * Second));
        Assert.AreEqual(starts, counter.Total);
    }
}
