using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SurgeWatchTests
{
    // Buckets until the first answer: those that are left out, and five stretches of a cycle. 115 ms.
    private const int FirstAnswer = SurgeWatch.LeftOut + (5 * SwingWindow.Length);

    // 100 ms, and up to a cycle that evens out the ripple.
    [TestMethod]
    public void AFlatStartIsOverAfterOneHundredMilliseconds()
    {
        Near.Between(40, BucketsToTheEnd(1000, 0, 0), 48);
    }

    // From 10,000 by 3.8 % and by 9.6 % in 80 ms, of which 4 % is the limit; a soft start; a fall by 160 in 80 ms, within the
    // noise or not.
    [TestMethod]
    [DataRow(10000, 12, 0, true)]
    [DataRow(10000, 30, 0, false)]
    [DataRow(1000, -20, 0, true)]
    [DataRow(1000, 5, 165, true)]
    [DataRow(1000, 5, 155, false)]
    public void AFallBeyondTheLimitAndTheNoiseIsASurge(int first, int fallABucket, int noise, bool isOver)
    {
        Assert.AreEqual(isOver, BucketsToTheEnd(first, fallABucket, noise) > 0);
    }

    // The swing of a 50 Hz sine ripples with the place of the buckets on its half-cycle.
    [TestMethod]
    public void ARippleOverTheCycleIsNoFall()
    {
        for (int phase = 0; phase < 8; phase++)
        {
            SurgeWatch watch = new SurgeWatch();
            bool isOver = false;
            for (int i = 0; i < FirstAnswer; i++)
            {
                isOver = watch.Accept(new Bucket(), (i + phase) % 4 == 0 ? 1000 : 900, (i + phase) % 4 == 0 ? 1000 : 900, 0);
            }

            Assert.IsTrue(isOver);
        }
    }

    [TestMethod]
    public void ASurgeEndsWithinOneHundredMillisecondsOfItsFall()
    {
        SurgeWatch watch = new SurgeWatch();
        int at = 0;
        int swing = 20000;
        bool isOver = false;
        while (!isOver && at < 400)
        {
            // Falls for 200 ms, then runs flat.
            swing -= at < 80 ? 100 : 0;
            isOver = watch.Accept(new Bucket(), swing, swing, 0);
            at++;
        }

        Near.Between(81, at, 128);
    }

    // Stretches of a swing each, with so many of a hundred readings at the lower rail and so much noise, and what the last says.
    [TestMethod]

    // A surge falls by a twenty-fifth of the first 20 ms at least, by seven eighths of that in one stretch at the most, and does
    // not rise by more than a twenty-eighth of 9,500, which is 339, on the way.
    [DataRow("10000 9900 9800 9700 9600", 0, 0, false)]
    [DataRow("10000 9900 9800 9700 9601", 0, 0, true)]
    [DataRow("10000 9125 9100 9050 9000", 0, 0, false)]
    [DataRow("10000 9124 9100 9050 9000", 0, 0, true)]
    [DataRow("10000 9500 9839 9000 8500", 0, 0, false)]
    [DataRow("10000 9500 9840 9000 8500", 0, 0, true)]

    // What shows no more than five times the noise has no surge that matters.
    [DataRow("1000 900 800 700 600", 0, 200, true)]
    [DataRow("1000 900 800 700 600", 0, 199, false)]

    // A sixteenth up in three stretches is a soft start.
    [DataRow("1600 2000 1700", 0, 0, false)]
    [DataRow("1600 2000 1701", 0, 0, true)]

    // What clips a little shows more the less it clips: a rise behind a clipped stretch speaks against nothing.
    [DataRow("10000 9500 10000 9000 8500", 0, 0, true)]
    [DataRow("10000 9500 10000 9000 8500", 5, 0, false)]
    public void ASurgeFallsEnoughNotAtOnceAndWithoutARise(string swings, int atLowRail, int noise, bool isOver)
    {
        SurgeWatch watch = Begun();
        int[] stretches = Texts.Numbers(swings);
        for (int i = 0; i < stretches.Length; i++)
        {
            Assert.AreEqual(isOver && i == stretches.Length - 1, Stretch(watch, stretches[i], atLowRail, 0, noise));
        }
    }

    // At the rail every surge shows the same swing; the share of the readings there falls with it.
    [TestMethod]
    [DataRow(30, 28, false)]
    [DataRow(30, 29, true)]
    [DataRow(15, 13, false)]
    [DataRow(14, 12, true)]
    [DataRow(30, 30, true)]
    [DataRow(0, 30, true)]
    public void WhatClipsLessAndLessIsASurge(int firstShare, int lastShare, bool isOver)
    {
        SurgeWatch atTheTop = Begun();
        SurgeWatch atTheBottom = Begun();
        Assert.IsFalse(Stretch(atTheTop, 20000, 0, firstShare, 0));
        Assert.IsFalse(Stretch(atTheBottom, 20000, firstShare, 0, 0));
        bool isTopOver = false;
        bool isBottomOver = false;
        for (int i = 0; i < 4; i++)
        {
            isTopOver = Stretch(atTheTop, 20000, 0, lastShare, 0);
            isBottomOver = Stretch(atTheBottom, 20000, lastShare, 0, 0);
        }

        Assert.AreEqual(isOver, isTopOver);
        Assert.AreEqual(isOver, isBottomOver);
    }

    [TestMethod]
    public void TheLevelIsTheLatestLookAndThenTheLastStretchsMean()
    {
        SurgeWatch watch = new SurgeWatch();
        watch.Accept(new Bucket(), 700, 1, 0);
        Assert.AreEqual(700, watch.Level);
        for (int i = 1; i < SurgeWatch.LeftOut + 7; i++)
        {
            watch.Accept(new Bucket(), 800, 1, 0);
        }

        Assert.AreEqual(800, watch.Level);
        watch.Accept(new Bucket(), 880, 1, 0);
        Assert.AreEqual(810, watch.Level);
        watch.Accept(new Bucket(), 5000, 1, 0);
        Assert.AreEqual(810, watch.Level);
        Stretch(watch, 400, 0, 0, 0);
        Assert.AreEqual((5000 + (7 * 400)) / 8, watch.Level);
        watch.Reset();
        Assert.AreEqual(0, watch.Level);
    }

    // Whatever it saw before a restart, it decides as one that is new: flat is over, falling is not.
    [TestMethod]
    [DataRow(0, true)]
    [DataRow(200, false)]
    public void ARestartForgetsEverything(int fallAStretch, bool isOver)
    {
        for (int before = 1; before < 60; before++)
        {
            SurgeWatch watch = new SurgeWatch();
            for (int i = 0; i < before; i++)
            {
                watch.Accept(Clipped(40, 7), 20000 + (500 * i), 20000 - (300 * i), 0);
            }

            watch.Reset();
            SurgeWatch fresh = new SurgeWatch();
            bool last = false;
            for (int i = 0; i < FirstAnswer; i++)
            {
                int swing = 10000 - (i / 8 * fallAStretch);
                last = watch.Accept(Clipped(10, 0), swing, swing, 0);
                Assert.AreEqual(fresh.Accept(Clipped(10, 0), swing, swing, 0), last);
                Assert.AreEqual(fresh.Level, watch.Level);
            }

            Assert.AreEqual(isOver, last);
        }
    }

    // The first buckets, which are left out, are behind it.
    private static SurgeWatch Begun()
    {
        SurgeWatch watch = new SurgeWatch();
        for (int i = 0; i < SurgeWatch.LeftOut; i++)
        {
            Assert.IsFalse(watch.Accept(new Bucket(), 30000, 30000, 0));
        }

        return watch;
    }

    // 20 ms of a swing, with so many of each hundred readings at the rails.
    private static bool Stretch(SurgeWatch watch, int swing, int atLowRail, int atHighRail, int noise)
    {
        bool isOver = false;
        for (int i = 0; i < 8; i++)
        {
            isOver = watch.Accept(Clipped(atLowRail, atHighRail), swing, swing, noise);
        }

        return isOver;
    }

    private static Bucket Clipped(int atLowRail, int atHighRail)
    {
        Bucket bucket = new Bucket();
        bucket.Count = 100;
        bucket.Sum = 7;
        bucket.AtLowRail = atLowRail;
        bucket.AtHighRail = atHighRail;
        return bucket;
    }

    // Falls evenly for 150 ms.
    private static int BucketsToTheEnd(int first, int fallABucket, int noise)
    {
        SurgeWatch watch = new SurgeWatch();
        for (int i = 0; i < 60; i++)
        {
            if (watch.Accept(new Bucket(), first - (i * fallABucket), first - (i * fallABucket), noise))
            {
                return i + 1;
            }
        }

        return -1;
    }
}
