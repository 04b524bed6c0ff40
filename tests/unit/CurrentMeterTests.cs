using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class CurrentMeterTests
{
    // 200 ms of 2.5 ms buckets.
    [TestMethod]
    public void AnAnswerComesEveryEightyBuckets()
    {
        CurrentMeter meter = new CurrentMeter();
        for (int i = 1; i <= 240; i++)
        {
            Assert.AreEqual(i % 80 == 0, meter.Add(1000));
        }
    }

    // The rms of a square wave is its height (textbook identity); the second one goes through the whole range of a converter.
    [TestMethod]
    [DataRow(4, 25216, 700)]
    [DataRow(1, 4095 * 8, 4095 * 8)]
    public void TheRmsOfASquareWaveIsItsHeight(int half, int mean, int height)
    {
        CurrentMeter meter = new CurrentMeter();
        for (int i = 0; i < CurrentMeter.Length; i++)
        {
            meter.Add(i % (2 * half) < half ? mean + height : mean - height);
        }

        Assert.AreEqual(mean, meter.Mean);
        Assert.AreEqual(height, meter.Rms);
    }

    [TestMethod]
    public void ASteadyLineHasNoRmsAndLeavesNothingToTheNextWindow()
    {
        CurrentMeter meter = new CurrentMeter();
        Fill(meter, 40000);
        Assert.AreEqual("40000 0", Texts.Row(meter.Mean, meter.Rms));
        Fill(meter, 100);
        Assert.AreEqual("100 0", Texts.Row(meter.Mean, meter.Rms));
    }

    [TestMethod]
    public void AfterAGapTheWindowBeginsAnewAndTheLastResultStays()
    {
        CurrentMeter meter = new CurrentMeter();
        Fill(meter, 500);
        for (int i = 0; i < CurrentMeter.Length - 1; i++)
        {
            meter.Add(9000);
        }

        meter.Reset();
        Assert.AreEqual(500, meter.Mean);
        Fill(meter, 800);
        Assert.AreEqual(800, meter.Mean);
    }

    private static void Fill(CurrentMeter meter, int mean)
    {
        for (int i = 0; i < CurrentMeter.Length; i++)
        {
            meter.Add(mean);
        }
    }
}
