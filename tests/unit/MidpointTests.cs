using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class MidpointTests
{
    [TestMethod]
    public void TheFirstMeanIsTakenAndThenAnEighthOfADifferenceAtATime()
    {
        Midpoint midpoint = new Midpoint();
        midpoint.Accept(1000);
        Assert.AreEqual(1000, midpoint.Level);
        midpoint.Accept(1800);
        Assert.AreEqual(1100, midpoint.Level);
        midpoint.Accept(300);
        Assert.AreEqual(1000, midpoint.Level);
    }

    // It comes to rest within half a count.
    [TestMethod]
    public void ADriftIsFollowedToItsEnd()
    {
        Midpoint midpoint = new Midpoint();
        midpoint.Accept(20000);
        for (int i = 0; i < 200; i++)
        {
            midpoint.Accept(24000);
        }

        Near.Between(23993, midpoint.Level, 24000);
    }
}
