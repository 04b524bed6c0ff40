using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class StartCounterTests
{
    private const long Second = Time.Second;

    [TestMethod]
    public void AStartCountsForAMinute()
    {
        StartCounter counter = new StartCounter();
        counter.Add(10 * Second);
        Assert.AreEqual(1, counter.InLastMinute(69 * Second));
        Assert.AreEqual(0, counter.InLastMinute(70 * Second));
    }

    [TestMethod]
    public void NoStartIsCountedBeforeTheFirst()
    {
        Assert.AreEqual(0, new StartCounter().InLastMinute(5 * Second));
    }

    [TestMethod]
    public void MoreStartsThanItsPlacesCountAsTheMost()
    {
        StartCounter counter = new StartCounter();
        for (int i = 0; i < 50; i++)
        {
            counter.Add(i * Second);
        }

        Assert.AreEqual(StartCounter.Most, counter.InLastMinute(50 * Second));
        Assert.AreEqual(50, counter.Total);
    }

    [TestMethod]
    public void OldStartsDoNotHideNewOnes()
    {
        StartCounter counter = new StartCounter();
        for (int i = 0; i < 40; i++)
        {
            counter.Add(i * 20 * Second);
        }

        Assert.AreEqual(3, counter.InLastMinute((39 * 20 * Second) + Second));
    }
}
