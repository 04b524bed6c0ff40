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
        SwingWindow window = Windows.Full();
        for (int i = 1; i <= 30; i++)
        {
            Assert.AreEqual(i % 10 == 0, meter.Add(window));
        }
    }

    // The rms of a square wave is its height (textbook identity); the second one goes through the whole range of a converter.
    [TestMethod]
    [DataRow(4, 25216, 700)]
    [DataRow(1, 4095 * 8, 4095 * 8)]
    public void TheRmsOfASquareWaveIsItsHeight(int half, int mean, int height)
    {
        CurrentMeter meter = new CurrentMeter();
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < CurrentMeter.Length; i++)
        {
            Feed(meter, window, i % (2 * half) < half ? mean + height : mean - height);
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
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < CurrentMeter.Length - 1; i++)
        {
            Feed(meter, window, 9000);
        }

        meter.Reset();
        Assert.AreEqual(500, meter.Mean);
        Fill(meter, 800);
        Assert.AreEqual(800, meter.Mean);
    }

    private static void Fill(CurrentMeter meter, int mean)
    {
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < CurrentMeter.Length; i++)
        {
            Feed(meter, window, mean);
        }
    }

    // A bucket whose mean is so many sixteenths of a count.
    private static void Feed(CurrentMeter meter, SwingWindow window, int mean)
    {
        window.Add(mean, SensorScale.PartsACount);
        if (window.Place % SwingWindow.Length == 0)
        {
            meter.Add(window);
        }
    }
}
