using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SurgeWatchTests
{
    // 100 ms, and up to a cycle that evens out the ripple.
    [TestMethod]
    public void AFlatStartIsOverAfterOneHundredMilliseconds()
    {
        int buckets = BucketsToTheEnd(1000, 0, 0);
        Assert.IsTrue(buckets >= 40, buckets.ToString());
        Assert.IsTrue(buckets <= 48, buckets.ToString());
    }

    // From 10,000 by 4.8 % and by 12 % in 100 ms; a twelfth in 80 ms is the limit.
    [TestMethod]
    [DataRow(12, true)]
    [DataRow(30, false)]
    public void FallingByMoreThanATwelfthIsStillASurge(int fallABucket, bool isOver)
    {
        Assert.AreEqual(isOver, BucketsToTheEnd(10000, fallABucket, 0) > 0);
    }

    [TestMethod]
    public void ARisingSwingIsASoftStartAndNoSurge()
    {
        Assert.IsTrue(BucketsToTheEnd(1000, -20, 0) > 0);
    }

    [TestMethod]
    public void AFallWithinTheNoiseIsNoFall()
    {
        // 160 in 80 ms
        Assert.IsTrue(BucketsToTheEnd(1000, 5, 165) > 0);
        Assert.AreEqual(-1, BucketsToTheEnd(1000, 5, 155));
    }

    // The swing of a 50 Hz sine ripples with the place of the buckets on its half-cycle.
    [TestMethod]
    public void ARippleOverTheCycleIsNoFall()
    {
        for (int phase = 0; phase < 8; phase++)
        {
            SurgeWatch watch = new SurgeWatch();
            bool isOver = false;
            for (int i = 0; i < SurgeWatch.Length; i++)
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

        Assert.IsTrue(at > 80, at.ToString());
        Assert.IsTrue(at <= 128, at.ToString());
    }

    [TestMethod]
    public void AfterARestartAnotherOneHundredMillisecondsAreNeeded()
    {
        SurgeWatch watch = new SurgeWatch();
        for (int i = 0; i < 39; i++)
        {
            watch.Accept(new Bucket(), 1000, 1000, 0);
        }

        watch.Restart();
        for (int i = 0; i < 39; i++)
        {
            Assert.IsFalse(watch.Accept(new Bucket(), 1000, 1000, 0));
        }
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
