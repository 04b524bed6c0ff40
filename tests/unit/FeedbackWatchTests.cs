using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// What makes the wrong wiring suspected, what proves it, and what speaks against it.
[TestClass]
public class FeedbackWatchTests
{
    private const int Small = 1000;
    private const int Large = 6000;

    [TestMethod]
    public void TwoJumpsAreSuspectedAndThreeProbesProveIt()
    {
        FeedbackBench bench = New();
        bench.Use(5000);
        Assert.AreEqual(0, bench.Probes);
        bench.Wants = true;
        bench.Run(1490);
        Assert.AreEqual(0, bench.Probes);
        bench.Run(30);
        Assert.AreEqual(1, bench.Probes);
        bench.Run(3000);
        Assert.IsFalse(bench.IsProved);
        bench.Run(2500);
        Assert.AreEqual(3, bench.Probes);
        Assert.IsTrue(bench.IsProved);

        Notice notice = bench.Notices.Take();
        Assert.AreEqual((int)NoticeKind.Probed, (int)notice.Kind);
        Assert.AreEqual(1, notice.First);

        // A bucket after the contact has opened the bench's current is seen to be gone.
        Assert.IsTrue(notice.Figure >= 320 && notice.Figure <= 325);
    }

    [TestMethod]
    public void AToolThatIsSeenToStopSpeaksAgainstIt()
    {
        FeedbackBench bench = New();
        for (int i = 0; i < 6; i++)
        {
            bench.Wants = true;
            bench.Run(1300);
            bench.Watch.NoteStop(bench.Now);
            bench.Run(1000);
            bench.Wants = false;
            bench.Run(1000);
        }

        Assert.AreEqual(0, bench.Probes);
    }

    // What went with the last opening may be seen a little after the next closing.
    [TestMethod]
    public void AStopSeenInTheFirstSecondSaysNothing()
    {
        FeedbackBench bench = New();
        bench.Use(5000);
        bench.Wants = true;
        bench.Run(400);
        bench.Watch.NoteStop(bench.Now);
        bench.Run(1200);
        Assert.AreEqual(1, bench.Probes);
    }

    [TestMethod]
    public void AClosingWithoutAJumpEndsTheRow()
    {
        FeedbackBench bench = New();
        bench.Use(5000);
        bench.Vacuum = 0;
        bench.Use(5000);
        bench.Vacuum = Large;
        bench.Use(5000);
        Assert.AreEqual(0, bench.Probes);
    }

    [TestMethod]
    public void ACurrentThatStaysEndsTheProbeAndTheSuspicion()
    {
        FeedbackBench bench = Suspected();
        bench.Tool += bench.Vacuum;
        bench.Vacuum = 0;
        bench.Run(590);
        Assert.IsTrue(bench.Watch.IsProbing);
        bench.Run(20);
        Assert.IsFalse(bench.Watch.IsProbing);
        Notice notice = bench.Notices.Take();
        Assert.AreEqual(0, notice.First);
        Assert.AreEqual(600, notice.Figure);
        bench.Run(20000);
        Assert.AreEqual(1, bench.Probes);
        Assert.IsFalse(bench.IsProved);
    }

    // The tool's current hides the vacuum's; when it has gone the vacuum's is alone.
    [TestMethod]
    public void WhatTheToolHidesIsProbedAgainWhenTheToolHasStopped()
    {
        FeedbackBench bench = New();
        bench.Tool = 2 * Large;
        bench.Use(5000);
        bench.Wants = true;
        bench.Run(2600);
        Assert.AreEqual(1, bench.Probes);
        bench.Tool = 0;
        for (int i = 0; i < 100 && !bench.IsProved; i++)
        {
            bench.Run(100);
        }

        Assert.AreEqual(4, bench.Probes);
        Assert.IsTrue(bench.IsProved);
    }

    // Each time after twice the time: a relay must not be worn out by a suspicion.
    [TestMethod]
    public void ProbesThatShowNothingBecomeRare()
    {
        FeedbackBench bench = New();
        bench.Tool = 2 * Large;
        bench.Use(5000);
        bench.Wants = true;
        bench.Run(60000);
        Assert.AreEqual(5, bench.Probes);
        bench.Run(540000);
        Assert.IsTrue(bench.Probes < 13);
        Assert.IsFalse(bench.IsProved);
    }

    // Before the driver can have let go, slower than a contact, and after the driver has let go.
    [TestMethod]
    [DataRow(100000, 0)]
    [DataRow(320000, 150000)]
    [DataRow(650000, 0)]
    public void ACurrentThatGoesOtherwiseProvesNothing(int after, int fall)
    {
        FeedbackBench bench = New();
        bench.OpensAfter = after;
        bench.FallMicroseconds = fall;
        bench.Use(5000);
        bench.Wants = true;
        bench.Run(60000);
        Assert.IsTrue(bench.Probes >= 1);
        Assert.IsFalse(bench.IsProved);
    }

    [TestMethod]
    public void ACurrentThatGoesAtOtherTimesEachTimeProvesNothing()
    {
        FeedbackBench bench = New();
        bench.OpensAfter = 200000;
        bench.Use(5000);
        bench.Wants = true;
        int probes = 0;
        for (int i = 0; i < 40000; i++)
        {
            bench.Run(3);
            if (bench.Probes != probes)
            {
                probes = bench.Probes;
                bench.OpensAfter = bench.OpensAfter == 200000 ? 220000 : 200000;
            }
        }

        Assert.IsFalse(bench.IsProved);
        Assert.IsTrue(bench.Probes >= 5);
    }

    [TestMethod]
    public void ACurrentThatComesBackEndsTheProbe()
    {
        FeedbackBench bench = Suspected();
        bench.Run(400);
        bench.Tool = Large;
        bench.Run(10);
        Assert.IsFalse(bench.Watch.IsProbing);
        Assert.AreEqual(0, bench.Notices.Take().First);
    }

    [TestMethod]
    public void AVoidWindowEndsAProbe()
    {
        FeedbackBench bench = Suspected();
        bench.Run(100);
        bench.IsVoid = true;
        bench.Run(3);
        Assert.IsFalse(bench.Watch.IsProbing);
        Assert.AreEqual(0, bench.Notices.Take().First);
    }

    [TestMethod]
    public void AVoidWindowAtAClosingIsNoJump()
    {
        FeedbackBench bench = New();
        bench.Use(5000);
        bench.IsVoid = true;
        bench.Wants = true;
        bench.Run(50);
        bench.IsVoid = false;
        bench.Run(5000);
        Assert.AreEqual(0, bench.Probes);
    }

    // Most of the way to where a sensor clips nothing is seen to jump; and a surge that has fallen by an eighth may have hidden it.
    [TestMethod]
    [DataRow(42000, 42000, 1)]
    [DataRow(40000, 40000, 0)]
    [DataRow(20000, 17000, 1)]
    [DataRow(20000, 18000, 0)]
    public void ASurgeThatHidesAJumpCountsAsOne(int before, int after, int probes)
    {
        FeedbackBench bench = New();
        bench.Vacuum = 0;
        for (int i = 0; i < 2; i++)
        {
            bench.Tool = before;
            bench.Run(100);
            bench.Wants = true;
            bench.Run(200);
            bench.Tool = after;
            bench.Run(1600);
            bench.Wants = false;
            bench.Run(1000);
        }

        Assert.AreEqual(probes, bench.Probes);
    }

    // While it closes, waits, probes, sees the current gone, and between two probes.
    [TestMethod]
    [DataRow(50)]
    [DataRow(1000)]
    [DataRow(1600)]
    [DataRow(1900)]
    [DataRow(2200)]
    [DataRow(4200)]
    public void AWatchThatTookTheTapeGoesOnAsTheOtherDoes(int milliseconds)
    {
        FeedbackBench bench = New();
        bench.Use(5000);
        bench.Wants = true;
        bench.Run(milliseconds);
        bench.MakeTwin();
        bench.Run(7000);
        Assert.IsTrue(bench.IsProved);
        Assert.IsFalse(bench.Differs);
    }

    [TestMethod]
    public void AVacuumTooSmallToKeepAToolRunningIsLeftAlone()
    {
        FeedbackBench bench = New();
        bench.Tool = 0;
        bench.Vacuum = FeedbackBench.Least - 1;
        bench.Use(5000);
        bench.Use(5000);
        bench.Use(5000);
        Assert.AreEqual(0, bench.Probes);
    }

    private static FeedbackBench New()
    {
        FeedbackBench bench = new FeedbackBench();
        bench.Tool = Small;
        bench.Vacuum = Large;
        bench.Run(100);
        return bench;
    }

    private static FeedbackBench Suspected()
    {
        FeedbackBench bench = New();
        bench.Use(5000);
        bench.Wants = true;
        bench.Run(1505);
        Assert.IsTrue(bench.Watch.IsProbing);
        return bench;
    }
}
