using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SwingWindowTests
{
    [TestMethod]
    public void NineBucketsMakeTheFirstAnswer()
    {
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < 8; i++)
        {
            window.Add(5000, 5);
            Assert.IsFalse(window.IsValid);
        }

        window.Add(5000, 5);
        Assert.IsTrue(window.IsValid);
        Assert.AreEqual(0, window.Swing);
    }

    [TestMethod]
    public void ASwingIsThePeakToPeakOfTheMeansInSixteenths()
    {
        SwingWindow window = Filled(1000);
        window.Add(5 * 1100, 5);
        window.Add(5 * 1100, 5);

        // The means of two buckets run from 1000 to 1100 counts.
        Assert.AreEqual(100 * 16, window.Swing);
    }

    [TestMethod]
    public void OneWildBucketCountsHalf()
    {
        SwingWindow window = Filled(1000);
        window.Add(5 * 1100, 5);
        window.Add(5 * 1000, 5);
        Assert.AreEqual(50 * 16, window.Swing);
    }

    [TestMethod]
    public void ARestingLevelDoesNotMatter()
    {
        Assert.AreEqual(StepFrom(200, 60), StepFrom(3500, 60));
    }

    [TestMethod]
    public void WhatIsAWindowAgoIsForgotten()
    {
        SwingWindow window = Filled(1000);
        window.Add(5 * 1100, 5);
        for (int i = 0; i < SwingWindow.Length; i++)
        {
            window.Add(5 * 1000, 5);
            Assert.AreEqual(50 * 16, window.Swing);
        }

        window.Add(5 * 1000, 5);
        Assert.AreEqual(0, window.Swing);
    }

    [TestMethod]
    public void ASingleEmptyBucketIsBridged()
    {
        SwingWindow window = Filled(1000);
        window.Add(0, 0);
        Assert.IsTrue(window.IsValid);
        window.Add(5 * 1000, 5);
        Assert.IsTrue(window.IsValid);
        Assert.AreEqual(0, window.Swing);
    }

    [TestMethod]
    public void TwoEmptyBucketsVoidTheWindowAndKeepItsLastSwing()
    {
        SwingWindow window = Filled(1000);
        window.Add(5 * 1100, 5);
        window.Add(0, 0);
        int swing = window.Swing;
        window.Add(0, 0);
        Assert.IsFalse(window.IsValid);
        Assert.AreEqual(swing, window.Swing);
    }

    [TestMethod]
    public void AfterAGapAWholeWindowMustComeAnew()
    {
        SwingWindow window = Filled(1000);
        window.Void();
        for (int i = 0; i < 8; i++)
        {
            window.Add(5 * 2000, 5);
            Assert.IsFalse(window.IsValid);
        }

        window.Add(5 * 2000, 5);
        Assert.IsTrue(window.IsValid);

        // Nothing of the level before the gap is left.
        Assert.AreEqual(0, window.Swing);
    }

    [TestMethod]
    public void BucketsOfUnequalCountWeighByTheirReadings()
    {
        SwingWindow window = Filled(1000);
        window.Add(3 * 1000, 3);
        window.Add(1 * 1100, 1);

        // (3 × 1000 + 1 × 1100) / 4 = 1025
        Assert.AreEqual(25 * 16, window.Swing);
    }

    private static int StepFrom(int level, int step)
    {
        SwingWindow window = Filled(level);
        window.Add(5 * (level + step), 5);
        window.Add(5 * (level + step), 5);
        return window.Swing;
    }

    private static SwingWindow Filled(int level)
    {
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < 9; i++)
        {
            window.Add(5 * level, 5);
        }

        return window;
    }
}
