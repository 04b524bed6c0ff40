using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class MidpointTests
{
    [TestMethod]
    public void TheFirstMeanIsTaken()
    {
        Midpoint midpoint = new Midpoint();
        midpoint.Accept(25216);
        Assert.AreEqual(25216, midpoint.Level);
    }

    [TestMethod]
    public void AnEighthOfADifferenceIsFollowedAtATime()
    {
        Midpoint midpoint = new Midpoint();
        midpoint.Accept(1000);
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

        Assert.IsTrue(midpoint.Level > 23992, midpoint.Level.ToString());
        Assert.IsTrue(midpoint.Level <= 24000, midpoint.Level.ToString());
    }
}
