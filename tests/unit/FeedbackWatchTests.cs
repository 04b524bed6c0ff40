using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// With a tool, a vacuum and a relay that takes its time: from the first closing until the wrong wiring is proved.
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

    private static FeedbackBench New()
    {
        FeedbackBench bench = new FeedbackBench();
        bench.Tool = Small;
        bench.Vacuum = Large;
        bench.Run(100);
        return bench;
    }
}
