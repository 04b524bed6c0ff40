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

    [TestMethod]
    [DataRow(119, false)]
    [DataRow(120, true)]
    public void TheLeastMeanNeedsThreeTenths(int buckets, bool has)
    {
        SwingMeter meter = Meter();
        Feed(meter, 300, buckets);
        Assert.AreEqual(has, meter.HasLeastMean);
        Assert.AreEqual(has ? 300 : int.MaxValue, meter.LeastMean);
    }

    [TestMethod]
    public void TheLastTwoTenthsAreLeftOut()
    {
        SwingMeter meter = Meter();
        Feed(meter, 800, 5 * Tenth);
        Feed(meter, 10, 2 * Tenth);
        Assert.AreEqual(800, meter.LeastMean);
        Feed(meter, 10, Tenth);
        Assert.AreEqual(10, meter.LeastMean);
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
    public void TheLeastIsKeptWhenTheSwingRisesAgain()
    {
        SwingMeter meter = Meter();
        Feed(meter, 900, 2 * Tenth);
        Feed(meter, 400, Tenth);
        Feed(meter, 900, 6 * Tenth);
        Assert.AreEqual(400, meter.LeastMean);
    }

    [TestMethod]
    public void ARestartForgetsAllButTheLevels()
    {
        SwingMeter meter = Meter();
        meter.High = 50;
        meter.Low = 500;
        Feed(meter, 100, (4 * Tenth) + 17);
        meter.Restart();
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
        meter.Restart();
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
