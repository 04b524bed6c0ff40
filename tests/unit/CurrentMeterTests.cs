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

    // The rms of a square wave is its height (textbook identity).
    [TestMethod]
    public void TheRmsOfASquareWaveIsItsHeight()
    {
        CurrentMeter meter = new CurrentMeter();
        for (int i = 0; i < CurrentMeter.Length; i++)
        {
            meter.Add(i % 8 < 4 ? 25216 + 700 : 25216 - 700);
        }

        Assert.AreEqual(25216, meter.Mean);
        Assert.AreEqual(700, meter.Rms);
    }

    [TestMethod]
    public void ASteadyLineHasNoRms()
    {
        CurrentMeter meter = new CurrentMeter();
        Fill(meter, 40000);
        Assert.AreEqual(40000, meter.Mean);
        Assert.AreEqual(0, meter.Rms);
    }

    [TestMethod]
    public void NothingOfTheLastWindowIsLeftInTheNext()
    {
        CurrentMeter meter = new CurrentMeter();
        Fill(meter, 40000);
        Fill(meter, 100);
        Assert.AreEqual(100, meter.Mean);
        Assert.AreEqual(0, meter.Rms);
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

    [TestMethod]
    public void TheWholeRangeOfAConverterDoesNotOverflow()
    {
        CurrentMeter meter = new CurrentMeter();
        for (int i = 0; i < CurrentMeter.Length; i++)
        {
            meter.Add((i & 1) == 0 ? 0 : 4095 * 16);
        }

        Assert.AreEqual(4095 * 8, meter.Mean);
        Assert.AreEqual(4095 * 8, meter.Rms);
    }

    private static void Fill(CurrentMeter meter, int mean)
    {
        for (int i = 0; i < CurrentMeter.Length; i++)
        {
            meter.Add(mean);
        }
    }
}
