using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class ToolFinderTests
{
    private const int StartAt = 3200;
    private const int StopBelow = 1600;

    // Half a second and the block under way.
    private const int Slowly = 320;

    // The levels follow a floor in two steps, four buckets apart.
    private const int LevelsFollow = 4;

    // A tool that idles at 350 across a lamp of 500 is left after its surge, where 600 make a start; the lamp alone is not.
    [TestMethod]
    [DataRow(0, 545, false)]
    [DataRow(0, 551, true)]
    [DataRow(500, 520, false)]
    [DataRow(500, 610, true)]
    public void WhatIsLeftAfterASurgeIsATool(int lamp, int swing, bool isTool)
    {
        StandingLoad standing = new StandingLoad();
        standing.Power = SwingWindow.PowerOf(lamp);
        standing.Steady = lamp;
        ToolLevels levels = new ToolLevels();
        levels.Use(600, 350);
        levels.Begin(50, 12, standing);
        levels.Complete(50, 12, standing);
        Assert.AreEqual(isTool, SwingWindow.PowerOf(swing) >= levels.LeftPower);
    }

    // The last second of a lamp of 500 may show 530 by noise, which makes no difference; 600 is a lamp just lit.
    [TestMethod]
    [DataRow(530, true)]
    [DataRow(600, false)]
    public void ALampThatWasJustLitCountsByItsLastSecond(int lastSecond, bool isTool)
    {
        StandingLoad standing = new StandingLoad();
        standing.Power = SwingWindow.PowerOf(500);
        standing.Mean = SwingWindow.PowerOf(lastSecond);
        standing.Steady = 500;
        ToolLevels levels = new ToolLevels();
        levels.Use(600, 350);
        levels.Begin(50, 12, standing);
        levels.Complete(50, 12, standing);
        Assert.AreEqual(isTool, SwingWindow.PowerOf(610) >= levels.LeftPower);
    }

    // On a quiet line the settings. On a noisy one 250, 188 and 125 hundredths of the floor where that is more; the slow lane's
    // floor is a quarter of it, its levels 240 and 125 hundredths of that. The floor never begins above its cap.
    [TestMethod]
    [DataRow(StartAt, StopBelow, 100, StartAt, StartAt, StartAt, StopBelow, StopBelow)]
    [DataRow(StartAt, StopBelow, 2000, 5000, 3760, StartAt, 2500, StopBelow)]
    [DataRow(400, 200, 2000, 5000, 3760, 960, 2500, 500)]
    public void TheLevelsKeepClearOfTheFloor(
        int startAt, int stopBelow, int noise, int start, int startOfTwo, int leastStart, int stop, int leastStop)
    {
        FinderBench bench = New(noise, 1, startAt, stopBelow);
        ToolLevels levels = bench.Finder.Levels;
        Assert.AreEqual(
            Texts.Row(start, startOfTwo, leastStart, stop, leastStop),
            Texts.Row(levels.Start, levels.StartOfTwo, levels.LeastStart, levels.Stop, levels.LeastStop));
        Assert.AreEqual(noise, bench.Finder.Floor);
    }

    // The cap: start-at, or five quarters of the taught noise where that is more.
    [TestMethod]
    [DataRow(100, 3200)]
    [DataRow(3000, 3750)]
    public void TheFloorIsCappedAndSaysSo(int noise, int cap)
    {
        FinderBench bench = New(noise, 1000000);
        Assert.AreEqual(noise, bench.Finder.Floor);
        for (int i = 0; i < 400 && !bench.Finder.IsAtCap; i++)
        {
            bench.Swing(20000, 40);
            bench.Quiet(Bucket.ASecond - 40);
        }

        Assert.IsTrue(bench.Finder.IsAtCap);
        Assert.AreEqual(cap, bench.Finder.Floor);
    }

    [TestMethod]
    public void NewLevelsKeepWhatWasLearnedInTheSameUnits()
    {
        ToolFinder finder = New(2000).Finder;
        finder.Use(StartAt, StopBelow, 100, 1, true);
        Assert.AreEqual(2000, finder.Floor);
        Assert.AreEqual(5000, finder.Levels.Start);
        finder.Use(400, 200, 100, 1, true);
        Assert.AreEqual(400, finder.Floor);
        Assert.AreEqual(400 * 188 / 100, finder.Levels.LeastStart);
        finder.Use(400, 200, 100, 1, false);
        Assert.AreEqual(100, finder.Floor);
        Assert.AreEqual(400, finder.Levels.LeastStart);
    }

    // The fast lane's floor has fallen by a quarter when the slow lane's second has not ended yet.
    [TestMethod]
    public void TheLeastStopIsTheMorePatientLanes()
    {
        FinderBench bench = New(2000);
        bench.Finder.Use(400, 200, 100, 1, true);
        Assert.AreEqual(500, bench.Finder.Levels.LeastStop);
        bench.Quiet(SwingWindow.Length + Bucket.ASecond + LevelsFollow);
        Assert.AreEqual(300, bench.Finder.Floor);
        Assert.AreEqual(375, bench.Finder.Levels.LeastStop);
    }

    // A pulse is seen for a window's length; two of them are no twelve looks in a row.
    [TestMethod]
    public void TheLooksThatConfirmAStartMustComeInARow()
    {
        FinderBench bench = New(100, 12);
        bench.Quiet(40);
        bench.Pulse(400);
        bench.Quiet(12);
        bench.Pulse(400);
        bench.Quiet(12);
        Assert.IsFalse(bench.Finder.IsRunning);
        Assert.IsTrue(bench.BucketsToStart(6400, 30) >= 12);
    }

    // Two cycles of a spark are the fast lane's to judge: in the slow lane's half second they would be a tool.
    [TestMethod]
    public void ASparkDoesNotStayInTheSlowLane()
    {
        FinderBench bench = New(100, 1000);
        bench.Quiet(400);
        bench.Swing(40000, 16);
        Assert.IsFalse(bench.Finder.IsRunning);
        Assert.AreEqual(-1, bench.BucketsToStart(0, 600));
    }

    // What it heard before the tool came says nothing of whether the tool still runs.
    [TestMethod]
    public void TheSlowLaneIsAskedAboutTheTimeAfterTheQuestion()
    {
        FinderBench bench = New(2000);
        bench.Quiet(390);
        Assert.IsTrue(bench.BucketsToStart(6400, 16) > 0);
        bench.GoOn(6400, 40);
        bench.GoOn(2000, 120);
        Assert.IsTrue(bench.Finder.IsUnsure);
        Assert.IsTrue(bench.Finder.IsRunning);
        bench.GoOn(2000, 100);
        Assert.IsFalse(bench.Finder.IsUnsure);
        Assert.IsTrue(bench.Finder.IsRunning);
    }

    // Where the floor is above a fifth of start-at, single means do not count: a cycle, and then two, have to show the tool.
    [TestMethod]
    [DataRow(5100, 5, 8)]
    [DataRow(4900, 5, 12)]
    [DataRow(3860, 9, 16)]
    public void ACycleOrTwoAboveTheirLevelAreATool(int swing, int least, int most)
    {
        Near.Between(least, BenchAtRest(2000).BucketsToStart(swing, 24), most);
    }

    [TestMethod]
    public void BelowTheLevelOfTwoOnlyTheSlowLaneFindsIt()
    {
        FinderBench bench = BenchAtRest(2000);
        Assert.AreEqual(-1, bench.BucketsToStart(3660, 100));
        bench.GoOn(3660, Slowly);
        Assert.IsTrue(bench.Finder.IsRunning);
        Assert.IsTrue(bench.Finder.IsSlow);
        Assert.IsFalse(bench.Finder.IsUnsure);
    }

    [TestMethod]
    public void BelowStartAtNothingFindsIt()
    {
        FinderBench bench = BenchAtRest(2000);
        Assert.AreEqual(-1, bench.BucketsToStart(3000, 2000));
    }

    // Half a cycle of a sine shows half of its swing, two buckets of it already 0.7 of that half; a fifth of start-at is the
    // noise that allows it.
    [TestMethod]
    [DataRow(640, 3)]
    [DataRow(641, 4)]
    public void ALargeToolShowsInSingleMeans(int noise, int buckets)
    {
        Assert.AreEqual(buckets, BenchAtRest(noise).BucketsToStart(6600, 16));
    }

    // One bucket: single means show it whole, the pair three fifths of it. It must reach start-at, and stand 1.65 times above the
    // stop level; each less a thirty-second, which single means lack of a sine.
    [TestMethod]
    [DataRow(300, 3000, true)]
    [DataRow(299, 3000, false)]
    [DataRow(194, 1600, true)]
    [DataRow(193, 1600, false)]
    public void SingleMeansMustNotStartWhatThePairTakesForStopped(int counts, int stopBelow, bool isRunning)
    {
        FinderBench bench = New(100, 1, StartAt, stopBelow);
        bench.Quiet(40);
        bench.Pulse(counts);
        Assert.AreEqual(isRunning, bench.Finder.IsRunning);
    }

    // A pulse four buckets after one of half its height: the pair shows a third of it, and it is looked at all the same.
    [TestMethod]
    public void SingleMeansAreLookedAtFromAQuarterOfTheirLevelOn()
    {
        FinderBench bench = BenchAtRest(100);
        bench.Pulse(100);
        bench.Quiet(3);
        Assert.IsFalse(bench.Finder.IsRunning);
        bench.Pulse(200);
        Assert.IsTrue(bench.Finder.Window.Swing < StartAt / 2, bench.Finder.Window.Swing.ToString());
        Assert.IsTrue(bench.Finder.IsRunning);
    }

    [TestMethod]
    public void AToolHasStoppedAfterTwoCyclesBelowTheStopLevel()
    {
        FinderBench bench = Running(100);
        Assert.AreEqual(-1, bench.BucketsToStop(1700, 200));
        Near.Between(15, bench.BucketsToStop(1500, 60), 15 + SwingWindow.Length);
        Assert.IsFalse(bench.Finder.IsSlow);
    }

    // Thirteen looks in a row and no more, five times over.
    [TestMethod]
    public void TheLooksBelowTheStopLevelMustComeInARow()
    {
        FinderBench bench = Running(100);
        for (int i = 0; i < 5; i++)
        {
            Assert.AreEqual(-1, bench.BucketsToStop(1500, 20));
            Assert.AreEqual(-1, bench.BucketsToStop(6400, 16));
        }
    }

    // Start-at lies within the noise: the fast lane may have seen noise, or lost a tool in it.
    [TestMethod]
    public void WhereNoiseLimitsTheSlowLaneIsAskedBeforeAToolIsLost()
    {
        FinderBench bench = Running(2000);
        bench.Swing(2000, 40);
        Assert.IsTrue(bench.Finder.IsRunning);
        Assert.IsTrue(bench.Finder.IsSlow);
        Assert.IsTrue(bench.Finder.IsUnsure);

        // Above its stop level the tool goes on; at rest it is gone with the next answer.
        bench.GoOn(2000, Slowly);
        Assert.IsTrue(bench.Finder.IsRunning);
        Assert.IsFalse(bench.Finder.IsUnsure);
        Assert.IsTrue(bench.BucketsToStop(0, Slowly) > 0);
        Assert.IsFalse(bench.Finder.IsSlow);
    }

    [TestMethod]
    [DataRow(true, false)]
    [DataRow(false, true)]
    public void WhatWasOnlySeenInASurgeMustReachTheStartLevel(bool mustReachStart, bool isRunning)
    {
        FinderBench bench = BenchAtRest(2000);
        Assert.IsTrue(bench.BucketsToStart(6400, 16) > 0);
        bench.GoOn(2000, 14);
        bench.Finder.RejectStart();
        Assert.IsTrue(bench.Finder.IsRunning);
        Assert.IsTrue(bench.Finder.IsUnsure);
        bench.Finder.MustReachStart = mustReachStart;
        bench.GoOn(2000, Slowly);
        Assert.AreEqual(isRunning, bench.Finder.IsRunning);
        Assert.IsFalse(bench.Finder.MustReachStart);
        Assert.IsFalse(bench.Finder.IsUnsure);
    }

    [TestMethod]
    public void OnAQuietLineASurgeThatWasAllIsDroppedAtOnce()
    {
        FinderBench bench = BenchAtRest(100);
        Assert.IsTrue(bench.BucketsToStart(6400, 16) > 0);
        bench.Finder.RejectStart();
        Assert.IsFalse(bench.Finder.IsRunning);
        Assert.IsFalse(bench.Finder.IsUnsure);
        Assert.IsFalse(bench.Finder.IsSlow);
    }

    // A quarter of the way down in a second, a thirty-second of it up; the levels go with it.
    [TestMethod]
    public void TheFloorIsLearnedOnceASecond()
    {
        FinderBench bench = New(2000);
        bench.Quiet(SwingWindow.Length + LevelsFollow);
        int before = bench.Learned;
        bench.Quiet(Bucket.ASecond);
        Assert.AreEqual(before + 1, bench.Learned);
        Assert.AreEqual(1500, bench.Finder.Floor);
        Assert.AreEqual(1500 * 250 / 100, bench.Finder.Levels.Start);
        bench.Quiet(Bucket.ASecond);
        Assert.AreEqual(1125, bench.Finder.Floor);
        Assert.AreEqual(StartAt, bench.Finder.Levels.Start);

        // While a tool runs there is nothing to learn.
        Assert.IsTrue(bench.BucketsToStart(6400, 16) > 0);
        bench.GoOn(6400, 2 * Bucket.ASecond);
        Assert.AreEqual(before + 2, bench.Learned);
        Assert.AreEqual(1125, bench.Finder.Floor);
    }

    // Above the level it is no noise: it counts up to the level.
    [TestMethod]
    public void ABurstCountsAsNoiseUpToTheLevel()
    {
        FinderBench bench = New(100, 200);
        bench.Quiet(Bucket.ASecond);
        int floor = bench.Finder.Floor;
        bench.Swing(20000, 100);
        Assert.IsFalse(bench.Finder.IsRunning);
        bench.Quiet(Bucket.ASecond - 100);

        // A fifth more, since two powers together reach less than one does.
        Assert.AreEqual(floor + ((StartAt + (StartAt / 5) - floor) >> 5), bench.Finder.Floor);
    }

    [TestMethod]
    public void NothingIsLearnedWhileATinyToolRuns()
    {
        FinderBench bench = BenchAtRest(2000);
        bench.Swing(3660, 100 + Slowly);
        Assert.IsTrue(bench.Finder.IsSlow);
        bench.Finder.ResetLearning();
        int floor = bench.Finder.Floor;
        int learned = bench.Learned;
        bench.GoOn(3660, 3 * Bucket.ASecond);
        Assert.IsTrue(bench.Finder.IsSlow);
        Assert.AreEqual(learned, bench.Learned);
        Assert.AreEqual(floor, bench.Finder.Floor);
    }

    // The slow lane learns too, and its levels with it: half of what it hears a second is nought.
    [TestMethod]
    public void TheSlowLanesFloorIsLearnedAsWell()
    {
        FinderBench bench = New(2000, 1, 400, 200);
        Assert.AreEqual(960, bench.Finder.Levels.LeastStart);
        bench.Quiet(4 * Bucket.ASecond);
        Assert.IsTrue(bench.Finder.Levels.LeastStart < 600, bench.Finder.Levels.LeastStart.ToString());
        bench.Quiet(8 * Bucket.ASecond);
        Assert.AreEqual(400, bench.Finder.Levels.LeastStart);
        Assert.AreEqual(200, bench.Finder.Levels.LeastStop);
    }

    [TestMethod]
    public void AGapKeepsTheDecisionAndBeginsTheLooksAnew()
    {
        FinderBench bench = Running(100);
        bench.Quiet(18);
        Assert.IsTrue(bench.Finder.IsRunning);
        bench.Finder.Window.Reset();
        bench.Quiet(SwingWindow.Length + 13);
        Assert.IsTrue(bench.Finder.IsRunning);
        bench.Quiet(1);
        Assert.IsFalse(bench.Finder.IsRunning);
    }

    [TestMethod]
    public void AfterAGapAWholeWindowMustComeBeforeAStart()
    {
        FinderBench bench = BenchAtRest(100);
        bench.Finder.Window.Reset();
        Assert.AreEqual(-1, bench.BucketsToStart(6400, SwingWindow.Length - 1));
        bench.GoOn(6400, 1);
        Assert.IsTrue(bench.Finder.IsRunning);
    }

    // Half a second of a tiny tool on either side of a gap is no half second.
    [TestMethod]
    public void AGapBeginsTheSlowLaneAnew()
    {
        FinderBench bench = BenchAtRest(2000);
        bench.Swing(3660, 150);
        bench.Empty();
        bench.Empty();
        Assert.AreEqual(-1, bench.BucketsToStart(3660, 150));
    }

    [TestMethod]
    public void ATurnDropsTheSecondAndTheBlocksUnderWay()
    {
        FinderBench bench = BenchAtRest(2000);
        bench.Swing(3660, 150);
        bench.Finder.ResetLearning();
        bench.Finder.ResetLearning();
        for (int i = 0; i < 150; i++)
        {
            bench.GoOn(3660, 1);
            Assert.IsFalse(bench.Finder.IsRunning);
        }

        FinderBench other = New(2000);
        other.Swing(1900, 300);
        other.Finder.ResetLearning();
        other.Quiet(SwingWindow.Length);
        other.Quiet(Bucket.ASecond - SwingWindow.Length - 1);
        Assert.AreEqual(0, other.Learned);
    }

    // 0.4 s until the slow lane answers, and a second of quiet answers: a quarter down. What it heard before the turn would have
    // kept it up.
    [TestMethod]
    public void ATurnDropsTheSlowLanesSecondAsWell()
    {
        FinderBench bench = New(2000, 1, 400, 200);
        bench.Swing(700, 300);
        Assert.AreEqual(960, bench.Finder.Levels.LeastStart);
        bench.Finder.ResetLearning();
        bench.Quiet(600);
        Near.Between(720, bench.Finder.Levels.LeastStart, 759);
    }

    // The levels are not on the tape: they are worked out from what is.
    [TestMethod]
    public void ATapeBringsTheLevelsToAnother()
    {
        FinderBench bench = BenchAtRest(2000);
        bench.Swing(1900, 3 * Bucket.ASecond);
        FinderBench other = New(100);
        StateTape tape = new StateTape();
        tape.Write();
        bench.Finder.Exchange(tape);
        tape.Read();
        other.Finder.Exchange(tape);
        Assert.AreNotEqual(StartAt, other.Finder.Levels.Start);
        Assert.AreEqual(bench.Finder.Levels.Start, other.Finder.Levels.Start);
        Assert.AreEqual(bench.Finder.Floor, other.Finder.Floor);
        Assert.AreEqual(bench.Finder.Levels.LeastStart, other.Finder.Levels.LeastStart);
    }

    private static FinderBench New(int noise, int confirm = 1, int startAt = StartAt, int stopBelow = StopBelow)
    {
        FinderBench bench = new FinderBench();
        bench.Finder.Use(startAt, stopBelow, noise, confirm, false);
        return bench;
    }

    // A tool of twice start-at is found and runs on for a while.
    private static FinderBench Running(int noise)
    {
        FinderBench bench = BenchAtRest(noise);
        Assert.IsTrue(bench.BucketsToStart(6400, 16) > 0);
        bench.GoOn(6400, 40);
        return bench;
    }

    // With full windows, and no more than a tenth of a second of the learning.
    private static FinderBench BenchAtRest(int noise)
    {
        FinderBench bench = New(noise);
        bench.Quiet(40);
        return bench;
    }
}
