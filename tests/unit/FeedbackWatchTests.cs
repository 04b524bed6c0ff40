using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// With a tool, a vacuum and a relay that takes its time: from the closing until it is proved that the vacuum feeds the line.
[TestClass]
public class FeedbackWatchTests
{
    private const int Tool = 6000;
    private const int Vacuum = 1800;

    // Four seconds of a steady current, three looks two seconds apart, whatever the phase.
    [TestMethod]
    [DataRow(0)]
    [DataRow(1)]
    [DataRow(2)]
    [DataRow(3)]
    [DataRow(4)]
    [DataRow(5)]
    [DataRow(6)]
    [DataRow(7)]
    public void WhatIsLeftWhenTheToolHasStoppedIsLookedAt(int angle)
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, Vacuum);
        bench.VacuumAngle = angle;
        bench.Run(3500);
        Assert.AreEqual(0, bench.Looks);
        bench.Tool = 0;
        long stop = bench.Now;
        Near.Between(3500, bench.MillisecondsToLook(true, 10000), 5100);
        bench.Run(1000);
        Assert.IsFalse(bench.IsProved);
        Notice notice = bench.Told.Take();
        Assert.AreEqual((int)NoticeKind.Probed, (int)notice.Kind);
        Assert.AreEqual(1, notice.First);
        Near.Between(280, notice.Figure, 305);

        bench.MillisecondsToLook(true, 5000);
        bench.MillisecondsToLook(false, 1000);
        bench.MillisecondsToLook(true, 5000);
        bench.MillisecondsToLook(false, 1000);
        Assert.IsTrue(bench.IsProved);
        Assert.AreEqual(3, bench.Looks);
        Near.Between(8000, (bench.Now - stop) / 1000, 15000);
        Near.Check(Vacuum, bench.Watch.Level, Vacuum / 20);
    }

    // It starts softly and draws more than the tool, so nothing has ever fallen.
    [TestMethod]
    public void ASteadyCurrentIsLookedAtAfterThreeQuartersOfAMinute()
    {
        FeedbackBench bench = FeedbackBench.Running(Vacuum, Tool);
        bench.Surge = 1;
        bench.Run(3000);
        bench.Tool = 0;
        Near.Between(41000, bench.MillisecondsToLook(true, 60000), 46000);
        bench.Run(9000);
        Assert.IsTrue(bench.IsProved);
    }

    // A look shows that it is not the vacuum's, and the level is known from then on, also a little off.
    [TestMethod]
    public void AToolThatIdlesIsLookedAtOnce()
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, 0);
        bench.Run(3000);
        bench.Tool = Vacuum;
        Near.Between(3500, bench.MillisecondsToLook(true, 10000), 5100);
        Near.Between(595, bench.MillisecondsToLook(false, 1000), 605);
        Assert.AreEqual(0, bench.Told.Take().First);
        bench.Run(60000);
        bench.Tool = Tool;
        bench.Run(3000);
        bench.Tool = Vacuum + (Vacuum / 12);
        bench.Run(60000);
        Assert.AreEqual(1, bench.Looks);

        // Another one is not.
        bench.Tool = Vacuum / 2;
        Near.Between(3500, bench.MillisecondsToLook(true, 10000), 5100);
        Assert.IsFalse(bench.IsProved);
    }

    // The vacuum's current is in it: the level is not known afterwards, although the swing stays the same (2·cos 120° = -1).
    [TestMethod]
    public void ALevelThatStaysWhileTheVacuumIsInItIsNotATools()
    {
        FeedbackBench bench = FeedbackBench.Running(3 * Tool, 0);
        bench.Run(1100);
        bench.Tool = Tool;
        bench.Vacuum = Tool * 14 / 10;
        bench.VacuumAngle = 3;
        Near.Between(3500, bench.MillisecondsToLook(true, 10000), 5100);
        bench.MillisecondsToLook(false, 1000);
        bench.Vacuum = Tool;
        bench.Tool = 0;
        Near.Between(3000, bench.MillisecondsToLook(true, 20000), 10000);
        bench.Run(9000);
        Assert.IsTrue(bench.IsProved);
    }

    // After a run-on without a tool the box is in order, as far as anybody knows.
    [TestMethod]
    public void WhereTheLineWasQuietBesideTheVacuumAToolIsLeftAlone()
    {
        FeedbackBench bench = FeedbackBench.Proven(Tool, 0);
        bench.Run(3000);
        bench.Tool = Vacuum;
        Assert.AreEqual(-1, bench.MillisecondsToLook(true, 148000));
        Near.Between(0, bench.MillisecondsToLook(true, 5000), 4000);
    }

    // Noise lifted the level for one run: the line that was quiet at the lower one is not forgotten.
    [TestMethod]
    public void ARunAtAHigherLevelTakesNothingBack()
    {
        FeedbackBench bench = FeedbackBench.Proven(Tool, 0);
        bench.Run(3000);
        bench.Wants = false;
        bench.Run(2000);
        bench.Least = 500;
        bench.Tool = 0;
        bench.Wants = true;
        bench.Run(5000);
        bench.Wants = false;
        bench.Run(2000);
        bench.Least = 400;
        bench.Tool = Tool;
        bench.Run(100);
        bench.Wants = true;
        bench.Run(3000);
        bench.Tool = Vacuum;
        Assert.AreEqual(-1, bench.MillisecondsToLook(true, 148000));
    }

    [TestMethod]
    public void WhereTheCurrentJumpedItIsLookedAtAllTheSame()
    {
        FeedbackBench bench = FeedbackBench.Proven(Tool, Vacuum);
        bench.Run(3500);
        bench.Tool = 0;
        Near.Between(19000, bench.MillisecondsToLook(true, 40000), 21500);
        bench.Run(9000);
        Assert.IsTrue(bench.IsProved);
    }

    // The tool ran when the relay opened, or the vacuum had not run for long: that says nothing.
    [TestMethod]
    [DataRow(Tool, 3500)]
    [DataRow(0, 2900)]
    public void AnOpeningSaysSomethingOnlyAfterAWhileWithoutATool(int tool, int milliseconds)
    {
        FeedbackBench bench = FeedbackBench.Running(tool, 0);
        bench.Run(milliseconds);
        bench.Wants = false;
        bench.Run(2000);
        bench.Tool = Tool;
        bench.Wants = true;
        bench.Run(3000);
        bench.Tool = Vacuum;
        Near.Between(3500, bench.MillisecondsToLook(true, 10000), 5100);
    }

    [TestMethod]
    public void AnOpeningEndsTheWatch()
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, Vacuum);
        bench.Run(3500);
        bench.Wants = false;
        bench.Run(10);
        Assert.IsFalse(bench.Watch.IsWatching);
        Assert.IsFalse(bench.Watch.WantsEveryBucket);
    }

    // Below the level that keeps a tool running there is nothing to be found.
    [TestMethod]
    [DataRow(400 - 30, false)]
    [DataRow(400 + 30, true)]
    public void AVacuumThatDoesNoHarmIsLeftAlone(int vacuum, bool isProved)
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, vacuum);
        bench.Run(3500);
        bench.Tool = 0;
        bench.Run(20000);
        Assert.AreEqual(isProved, bench.IsProved);
        Assert.AreEqual(isProved, bench.Looks > 0);
    }

    // While it looks a bucket is missing, or several: it waits, and sees the current gone.
    [TestMethod]
    public void SilenceDuringALookIsWaitedOut()
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, Vacuum);
        bench.Run(3500);
        bench.Tool = 0;
        bench.MillisecondsToLook(true, 10000);
        bench.Run(270);
        bench.Silence(4);
        bench.Run(500);
        Assert.AreEqual(1, bench.Told.Take().First);
    }

    // While it closes, waits, looks, sees the current gone, and between two looks.
    [TestMethod]
    [DataRow(50)]
    [DataRow(1000)]
    [DataRow(7800)]
    [DataRow(8300)]
    [DataRow(10000)]
    public void AWatchThatTookTheTapeGoesOnAsTheOtherDoes(int milliseconds)
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, Vacuum);
        bench.Run(milliseconds < 3500 ? milliseconds : 3500);
        bench.Tool = milliseconds < 3500 ? Tool : 0;
        bench.Run(milliseconds < 3500 ? 0 : milliseconds - 3500);
        bench.MakeTwin();
        bench.Tool = 0;
        bench.Run(15000);
        Assert.IsTrue(bench.IsProved);
        Assert.IsFalse(bench.Differs);
    }

    [TestMethod]
    public void AfterAResetNothingIsLeftOfASuspicion()
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, Vacuum);
        bench.Run(3500);
        bench.Tool = 0;
        bench.MillisecondsToLook(true, 10000);
        bench.Watch.Reset();
        Assert.IsFalse(bench.Watch.IsProbing);
        Assert.IsFalse(bench.Watch.IsWatching);
        Assert.IsFalse(bench.Watch.WantsEveryBucket);
    }
}
