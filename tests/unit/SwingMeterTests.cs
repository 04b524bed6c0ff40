using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SwingMeterTests
{
    // Buckets of 2.5 ms in a tenth of a second.
    private const int Tenth = 40;

    [TestMethod]
    public void TheGreatestIsThatOfASingleBucket()
    {
        SwingMeter meter = Meter();
        Feed(meter, 100, 30);
        Feed(meter, 700, 1);
        Feed(meter, 100, 30);
        Assert.AreEqual(700, meter.Greatest);
    }

    [TestMethod]
    public void BucketsInARowAboveAndBelowAreCountedAndTheLevelItselfIsNeither()
    {
        SwingMeter meter = Meter();
        meter.High = 500;
        meter.Low = 200;
        Feed(meter, 501, 7);
        Assert.AreEqual(7, meter.Above);
        Assert.AreEqual(0, meter.Below);
        Feed(meter, 500, 1);
        Assert.AreEqual(0, meter.Above);
        Feed(meter, 199, 9);
        Assert.AreEqual(9, meter.Below);
        Feed(meter, 200, 1);
        Assert.AreEqual(0, meter.Below);
    }

    // Swings, and buckets of each.
    [TestMethod]
    [DataRow("300 119", int.MaxValue)]
    [DataRow("300 120", 300)]

    // The last two tenths are left out, and the least is kept when the swing rises again.
    [DataRow("800 200 10 80", 800)]
    [DataRow("800 200 10 120", 10)]
    [DataRow("900 80 400 40 900 240", 400)]
    public void TheLeastMeanIsThatOfATenthAndNeedsThree(string swings, int least)
    {
        SwingMeter meter = Meter();
        int[] fed = Texts.Numbers(swings);
        for (int i = 0; i < fed.Length; i += 2)
        {
            Feed(meter, fed[i], fed[i + 1]);
        }

        Assert.AreEqual(least != int.MaxValue, meter.HasLeastMean);
        Assert.AreEqual(least, meter.LeastMean);
    }

    [TestMethod]
    public void TheLeastIsAMeanAndNotABucket()
    {
        SwingMeter meter = Meter();
        for (int i = 0; i < 3 * Tenth; i++)
        {
            meter.Accept((i & 1) == 0 ? 100 : 300);
        }

        Assert.AreEqual(200, meter.LeastMean);
    }

    [TestMethod]
    public void ARestartForgetsAllButTheLevels()
    {
        SwingMeter meter = Meter();
        meter.High = 50;
        meter.Low = 500;
        Feed(meter, 100, (4 * Tenth) + 17);
        meter.Reset();
        Assert.AreEqual("50 500 0 0 0", Texts.Row(meter.High, meter.Low, meter.Above, meter.Below, meter.Greatest));
        Assert.IsFalse(meter.HasLeastMean);

        // Nor is half a tenth from before left in the sum.
        Feed(meter, 300, 3 * Tenth);
        Assert.AreEqual(300, meter.LeastMean);
        Assert.AreEqual(300, meter.Greatest);
    }

    private static SwingMeter Meter()
    {
        SwingMeter meter = new SwingMeter();
        meter.Reset();
        return meter;
    }

    private static void Feed(SwingMeter meter, int swing, int buckets)
    {
        for (int i = 0; i < buckets; i++)
        {
            meter.Accept(swing);
        }
    }
}
