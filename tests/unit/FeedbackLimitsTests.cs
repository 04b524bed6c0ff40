using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// The watch for a wrong wiring by itself, bucket by bucket: each limit from both sides.
[TestClass]
public class FeedbackLimitsTests
{
    private const int JumpBuckets = 32;
    private const int SecondBuckets = 400;
    private const int FirstProbe = 600;

    // At least what keeps a tool running, and a sixteenth of what was there; near where the sensor clips any closing is one.
    [TestMethod]
    [DataRow(0, 400, true)]
    [DataRow(0, 399, false)]
    [DataRow(1000, 1400, true)]
    [DataRow(1000, 1399, false)]
    [DataRow(16000, 17000, true)]
    [DataRow(16000, 16999, false)]
    [DataRow(40946, 40946, false)]
    [DataRow(40950, 40950, true)]
    public void AJumpIsLargeEnoughToMatter(int before, int after, bool isSuspected)
    {
        ProbeBench bench = new ProbeBench();
        bench.Close(before);
        bench.Hold(after, 450);
        bench.CloseAgain(before);
        Assert.AreEqual(isSuspected ? FirstProbe : -1, bench.BucketsToProbe(after, 1000));
    }

    // Twice from one swing to another, after so many buckets of the first, and then so many of the first again.
    [TestMethod]

    // A jump comes within 80 ms.
    [DataRow(ProbeBench.Low, JumpBuckets - 1, ProbeBench.High, 0, FirstProbe - JumpBuckets)]
    [DataRow(ProbeBench.Low, JumpBuckets, ProbeBench.High, 0, -1)]

    // The vacuum's own surge may be over by the end of the 80 ms.
    [DataRow(ProbeBench.Low, 9, ProbeBench.High, 30, FirstProbe - 40)]

    // A surge that has fallen by an eighth a second later, looked at once, may have hidden a jump.
    [DataRow(8000, SecondBuckets - 1, 7000, 0, FirstProbe - SecondBuckets)]
    [DataRow(8000, SecondBuckets - 1, 7001, 0, -1)]
    public void AJumpComesSoonOrIsHiddenByASurge(int first, int buckets, int then, int after, int toTheProbe)
    {
        ProbeBench bench = new ProbeBench();
        for (int i = 0; i < 2; i++)
        {
            bench.CloseAgain(first);
            bench.Hold(first, buckets);
            bench.Hold(then, 1);
            bench.Hold(first, after);
        }

        Assert.AreEqual(toTheProbe, bench.BucketsToProbe(first, 1000));
    }

    [TestMethod]
    public void WithoutAToolThereIsNothingToWatch()
    {
        ProbeBench bench = new ProbeBench();
        bench.Close(500);
        bench.Hold(500, JumpBuckets);
        bench.Hold(ProbeBench.Least, 1);
        Assert.IsTrue(bench.Watch.IsWatching);
        bench.Hold(ProbeBench.Least - 1, 1);
        Assert.IsFalse(bench.Watch.IsWatching);
    }

    // At the least swing that keeps a tool running it is still worth a probe.
    [TestMethod]
    [DataRow(400, true)]
    [DataRow(399, false)]
    public void AProbeNeedsACurrentThatMatters(int swing, bool isProbed)
    {
        ProbeBench bench = new ProbeBench();
        bench.Close(0);
        bench.Hold(ProbeBench.Least, JumpBuckets);
        bench.CloseAgain(0);
        bench.Hold(ProbeBench.Least, JumpBuckets);
        Assert.AreEqual(isProbed ? FirstProbe - JumpBuckets : -1, bench.BucketsToProbe(swing, 1000));
    }

    [TestMethod]
    [DataRow(0, true)]
    [DataRow(1, false)]
    public void AStopSeenLaterThanASecondAfterTheClosingSpeaksAgainstIt(int microseconds, bool isStillWatching)
    {
        ProbeBench bench = ProbeBench.ClosedTwice();
        bench.Hold(ProbeBench.High, SecondBuckets);
        bench.Watch.NoteStop(bench.Now + microseconds);
        Assert.AreEqual(isStillWatching, bench.Watch.IsWatching);
        Assert.AreEqual(isStillWatching, bench.BucketsToProbe(ProbeBench.High, FirstProbe) > 0);
    }

    [TestMethod]
    public void AnOpeningEndsTheSuspicionOfThisClosing()
    {
        ProbeBench bench = ProbeBench.ClosedTwice();
        bench.Hold(ProbeBench.High, 500);
        Assert.IsTrue(bench.Watch.IsWatching);
        bench.Open();
        Assert.IsFalse(bench.Watch.IsWatching);
        Assert.AreEqual(-1, bench.BucketsToProbe(ProbeBench.High, 1000));
    }

    // While a probe waits for its time, not while the current stays near what the last one saw.
    [TestMethod]
    [DataRow(6125, 600)]
    [DataRow(6126, 1200)]
    public void AfterAProbeThatShowedNothingAFallIsWorthAnother(int swing, int buckets)
    {
        ProbeBench bench = ProbeBench.Failed();
        Assert.AreEqual(buckets, bench.BucketsToProbe(swing, 2000));
    }

    [TestMethod]
    public void TheFallMustHaveLastedForASecond()
    {
        ProbeBench bench = ProbeBench.Failed();
        bench.Hold(6000, 300);
        bench.Hold(ProbeBench.High, 1);
        Assert.AreEqual(SecondBuckets, bench.BucketsToProbe(6000, 2000));

        bench = ProbeBench.Failed();
        bench.Hold(6000, 300);
        bench.Void();
        Assert.AreEqual(SecondBuckets, bench.BucketsToProbe(6000, 2000));
    }

    // An opening and a suspicion that is dropped both begin with the first wait again.
    [TestMethod]
    [DataRow(true)]
    [DataRow(false)]
    public void TheWaitIsShortAgainAfterTheRelayHasOpened(bool byStop)
    {
        ProbeBench bench = ProbeBench.Failed();
        bench.Hold(ProbeBench.High, SecondBuckets + 1);
        if (byStop)
        {
            bench.Watch.NoteStop(bench.Now);
            Assert.IsFalse(bench.Watch.IsWatching);
            bench.Close(0);
            bench.Hold(ProbeBench.High, 100);
        }

        bench.CloseAgain(0);
        Assert.AreEqual(FirstProbe, bench.BucketsToProbe(ProbeBench.High, 2000));
    }

    // The tool may have stopped just as the vacuum started: no jump at the closing after a probe, and one jump more is enough.
    [TestMethod]
    public void AfterAProbeOneJumpIsEnough()
    {
        ProbeBench bench = ProbeBench.Failed(ProbeBench.High);
        bench.Hold(ProbeBench.High, SecondBuckets);
        Assert.IsFalse(bench.Watch.IsWatching);
        bench.CloseAgain(0);
        Assert.AreEqual(FirstProbe, bench.BucketsToProbe(ProbeBench.High, 2000));
    }

    // Each wait is twice the one before, up to 96 s: a relay must not be worn out by a suspicion.
    [TestMethod]
    public void TheWaitsDouble()
    {
        ProbeBench bench = ProbeBench.Suspected();
        int expected = FirstProbe;
        for (int i = 0; i < 9; i++)
        {
            bench.Fail(0);
            expected = expected < 96 * SecondBuckets ? expected * 2 : expected;
            Assert.AreEqual(expected, bench.BucketsToProbe(ProbeBench.High, 50000));
        }

        Assert.IsFalse(bench.IsProved);
    }

    // Three times alike: the driver's time does not change by more than 15 ms. One that goes otherwise begins the row anew.
    [TestMethod]
    [DataRow("100 100 100", true)]
    [DataRow("100 106 100", true)]
    [DataRow("100 94 100", true)]
    [DataRow("100 107 100", false)]
    [DataRow("100 93 100", false)]
    [DataRow("100 100 107", false)]
    [DataRow("61 61 61", true)]
    [DataRow("60 60 60", true)]
    [DataRow("59 59 59", false)]
    [DataRow("100 100 120 120 120", true)]
    public void ThreeGoesAlikeProveIt(string goes, bool isProved)
    {
        ProbeBench bench = ProbeBench.Suspected();
        int[] buckets = Texts.Numbers(goes);
        for (int i = 0; i < buckets.Length; i++)
        {
            Assert.AreEqual(isProved && i == buckets.Length - 1, bench.Probe(buckets[i]));
        }
    }

    // From three quarters to half in no more than 45 ms; what goes slower is no contact.
    [TestMethod]
    [DataRow(5250, 3499, 18, 1)]
    [DataRow(5250, 3499, 19, 0)]
    [DataRow(5249, 3499, 19, 0)]
    public void AContactLetsGoAllAtOnce(int full, int half, int between, int hasGone)
    {
        ProbeBench bench = ProbeBench.Suspected();
        bench.Hold(ProbeBench.High, 98);
        bench.Hold(full, 1);
        bench.Hold(4000, between - 1);
        bench.Hold(half, 121);
        Assert.AreEqual(hasGone, bench.Told.Take().First);
        Assert.IsFalse(bench.Watch.IsProbing);
    }

    [TestMethod]
    public void JustBelowThreeQuartersIsNotFullAnyMore()
    {
        ProbeBench bench = ProbeBench.Suspected();
        bench.Hold(ProbeBench.High, 80);
        bench.Hold(5249, 18);
        bench.Hold(3499, 1);
        Assert.IsFalse(bench.Watch.IsProbing);
        Assert.AreEqual(0, bench.Told.Take().First);
    }

    [TestMethod]
    public void HalfOfItIsNotGoneYet()
    {
        ProbeBench bench = ProbeBench.Suspected();
        bench.Hold(ProbeBench.High, 100);
        bench.Hold(3500, 1);
        bench.Hold(3499, 119);
        Assert.IsTrue(bench.Watch.IsProbing);

        // It must stay away for 0.3 s, and what comes back to half was not it.
        bench.Hold(3500, 1);
        bench.CheckProbed(0, 221 * 5 / 2);
    }

    [TestMethod]
    public void GoneForThreeTenthsIsGone()
    {
        ProbeBench bench = ProbeBench.Suspected();
        bench.Hold(ProbeBench.High, 99);
        bench.Hold(0, 120);
        Assert.IsTrue(bench.Watch.IsProbing);
        bench.Hold(0, 1);
        bench.CheckProbed(1, 250);
    }

    [TestMethod]
    public void AProbeOfSixTenthsIsTheLongest()
    {
        ProbeBench bench = ProbeBench.Suspected();
        bench.Hold(ProbeBench.High, 239);
        Assert.IsTrue(bench.Watch.IsProbing);
        bench.Hold(ProbeBench.High, 1);
        bench.CheckProbed(0, 600);
        Assert.IsFalse(bench.Watch.IsWatching);
        Assert.AreEqual(-1, bench.BucketsToProbe(ProbeBench.High, 8000));
    }

    [TestMethod]
    public void AVoidWindowEndsAProbe()
    {
        ProbeBench bench = ProbeBench.Suspected();
        bench.Hold(ProbeBench.High, 40);
        bench.Void();
        Assert.IsFalse(bench.Watch.IsProbing);
        Assert.AreEqual(0, bench.Told.Take().First);
    }

    // Nobody knows whether the current has jumped; and a closing without a jump ends the row.
    [TestMethod]
    [DataRow(true)]
    [DataRow(false)]
    public void WithoutAJumpAtEveryClosingNothingIsSuspected(bool isVoid)
    {
        ProbeBench bench = ProbeBench.ClosedTwice();
        if (isVoid)
        {
            bench.Void();
        }

        Assert.AreEqual(-1, bench.BucketsToProbe(isVoid ? ProbeBench.High : ProbeBench.Low, 1000));
        bench.CloseAgain(ProbeBench.Low);
        Assert.AreEqual(-1, bench.BucketsToProbe(ProbeBench.High, 1000));
    }

    [TestMethod]
    public void WhatIsProvedIsToldWithItsSwing()
    {
        Assert.AreEqual(int.MaxValue, new ProbeBench().Watch.Level);
        ProbeBench bench = ProbeBench.Suspected();
        Assert.AreEqual(ProbeBench.High, bench.Watch.Level);
        bench.Watch.Reset(bench.Now);
        Assert.IsFalse(bench.Watch.IsProbing);
        Assert.IsFalse(bench.Watch.IsWatching);
        Assert.AreEqual(int.MaxValue, bench.Watch.Level);

        // Nothing is left of the two jumps.
        bench.Close(ProbeBench.Low);
        Assert.AreEqual(-1, bench.BucketsToProbe(ProbeBench.High, 1000));
    }
}
