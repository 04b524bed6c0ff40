using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class NoiseFloorTests
{
    [TestMethod]
    [DataRow(100, 100)]
    [DataRow(5000, 1000)]
    public void ItStartsFromWhatIsStoredCutToTheCap(int stored, int expected)
    {
        NoiseFloor floor = New(stored, 1000);
        Assert.AreEqual(expected, floor.Floor);
        Assert.IsFalse(floor.IsAtCap);
    }

    [TestMethod]
    public void ItRisesByAThirtySecondAndFallsByAQuarter()
    {
        NoiseFloor floor = New(100, 1000);
        Second(floor, 420);
        Assert.AreEqual(110, floor.Floor);
        Second(floor, 70);
        Assert.AreEqual(100, floor.Floor);
    }

    [TestMethod]
    public void ItReachesALevelThatStaysFromBelowAndFromAbove()
    {
        NoiseFloor floor = New(100, 1000);
        Second(floor, 332, 300);

        Assert.AreEqual(332, floor.Floor);
        Second(floor, 40, 60);

        Assert.AreEqual(40, floor.Floor);
    }

    [TestMethod]
    public void ItIsCappedAndSaysSo()
    {
        NoiseFloor floor = New(100, 200);
        Second(floor, 2000, 100);

        Assert.AreEqual(200, floor.Floor);
        Assert.IsTrue(floor.IsAtCap);
        Second(floor, 0);
        Assert.IsFalse(floor.IsAtCap);

        // Just there counts.
        NoiseFloor there = New(200, 200);
        Second(there, 200);
        Assert.IsTrue(there.IsAtCap);
    }

    // A soft start that takes two seconds below the level moves the floor by less than a fifteenth of its rise.
    [TestMethod]
    public void ASoftStartHardlyMovesIt()
    {
        NoiseFloor floor = New(100, 1000);
        Second(floor, 500);
        Second(floor, 900);
        Assert.IsTrue(floor.Floor < 140, floor.Floor.ToString());
    }

    private static NoiseFloor New(int floor, int cap)
    {
        NoiseFloor noise = new NoiseFloor();
        noise.Set(floor, cap);
        return noise;
    }

    private static void Second(NoiseFloor floor, int noise, int seconds = 1)
    {
        for (int i = 0; i < seconds; i++)
        {
            floor.Move(noise);
        }
    }
}
