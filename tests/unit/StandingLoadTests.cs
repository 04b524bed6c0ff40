using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class StandingLoadTests
{
    private const int StartAt = 3200;

    // A sine of 50 Hz: its power is its own greatest.
    [TestMethod]
    public void ASteadyCurrentIsNoNoise()
    {
        FinderBench bench = Standing(2600);
        Near.Check(2600, bench.Finder.Standing.Steady, 26);
        Near.Check(SwingWindow.PowerOf(2600), bench.Finder.Standing.Power, SwingWindow.PowerOf(2600) / 50);
        Assert.IsTrue(bench.Finder.Floor < 100, bench.Finder.Floor.ToString());
        Assert.IsFalse(bench.Finder.IsAtCap);
        Assert.IsFalse(bench.Finder.Levels.IsNoiseLimited);
    }

    [TestMethod]
    public void BurstsAreNoiseAndNothingSteady()
    {
        FinderBench bench = New();
        for (int i = 0; i < 30; i++)
        {
            bench.Swing(2600, 40);
            bench.Quiet(Bucket.ASecond - 40);
        }

        Assert.AreEqual(0, bench.Finder.Standing.Steady);
        Assert.IsTrue(bench.Finder.Floor > 1000, bench.Finder.Floor.ToString());
    }

    // What a tool adds across the load: the powers add up (Pythagoras). Three quarters of start-at are found, and half is not.
    [TestMethod]
    [DataRow(2400, true)]
    [DataRow(1600, false)]
    public void AToolIsFoundByWhatItAdds(int added, bool isFound)
    {
        FinderBench bench = Standing(2600);
        int together = IntegerMath.SquareRoot((2600L * 2600) + ((long)added * added), 2600) * 101 / 100;
        Assert.AreEqual(isFound, bench.BucketsToStart(together, 400) > 0);
    }

    // It stays above the stop level, but within a tenth of what stood there before.
    [TestMethod]
    public void TheToolHasStoppedWhenWhatStoodThereIsLeft()
    {
        FinderBench bench = Standing(2600);
        Assert.IsTrue(bench.BucketsToStart(6400, 40) > 0);
        bench.GoOn(6400, 2 * Bucket.ASecond);
        Near.Between(1, bench.BucketsToStop(2860, 900), 2 * Bucket.ASecond + 20);
        Assert.IsFalse(bench.Finder.IsSlow);
    }

    // A fifth more than what stood there is a tool that idles, or a lamp that was lit: nobody can tell.
    [TestMethod]
    public void WhatStaysAboveWhatStoodThereIsNotLetGo()
    {
        FinderBench bench = Standing(2600);
        Assert.IsTrue(bench.BucketsToStart(6400, 40) > 0);
        Assert.AreEqual(-1, bench.BucketsToStop(3120, 20 * Bucket.ASecond));
    }

    [TestMethod]
    public void WhatGoesOffIsForgottenAtOnce()
    {
        FinderBench bench = Standing(2600);
        Assert.IsTrue(bench.Finder.Levels.StartOfTwo > StartAt);
        Assert.AreEqual(-1, bench.BucketsToStart(0, 3 * Bucket.ASecond));
        Assert.AreEqual(StartAt, bench.Finder.Levels.Start);
        Assert.AreEqual(0, bench.Finder.Standing.Steady);
    }

    private static FinderBench New()
    {
        FinderBench bench = new FinderBench();
        bench.Finder.Use(StartAt, 1600, 100, 1, false);
        return bench;
    }

    private static FinderBench Standing(int swing)
    {
        FinderBench bench = New();
        Assert.AreEqual(-1, bench.BucketsToStart(swing, 60 * Bucket.ASecond));
        return bench;
    }
}
