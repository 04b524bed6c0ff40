using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SurgeWatchTests
{
    // 0.2 s and the 0.2 s before.
    private const int TwoHalves = 2 * SurgeWatch.Half;

    [TestMethod]
    public void ACurrentThatNeverComesDownIsBelievedAfterTheTimeForIt()
    {
        SurgeBench bench = new SurgeBench();
        Assert.AreEqual(SurgeWatch.StretchesToBelieve, bench.ToTheEnd(1000));
    }

    // A surge of 0.1 s, and one of 0.5 s that stands like an induction motor's: over when 0.4 s have been flat after it.
    [TestMethod]
    [DataRow(5)]
    [DataRow(25)]
    [DataRow(60)]
    public void WhatHasComeDownIsOverWhenFourTenthsOfASecondAreFlat(int stretches)
    {
        SurgeBench bench = new SurgeBench();
        bool isBelieved = stretches >= SurgeWatch.StretchesToBelieve;
        Assert.AreEqual(isBelieved, bench.Add(6000, stretches));
        Assert.IsFalse(bench.Add(1000, TwoHalves - 1));
        Assert.IsTrue(bench.Add(1000, 1));
    }

    // By 0.15 % and by 1.5 % in 0.2 s, of which 1 % is the limit; and the same within an eighth of the noise, or not.
    [TestMethod]
    [DataRow(15, 0, true)]
    [DataRow(150, 0, false)]
    [DataRow(150, 500, true)]
    [DataRow(150, 350, false)]
    public void AFallBeyondAHundredthAndTheNoiseIsASurge(int fallAStretch, int noise, bool isOver)
    {
        SurgeBench bench = new SurgeBench();
        bench.Noise = noise;
        bool wasOver = false;
        for (int i = 0; i < SurgeWatch.StretchesToBelieve; i++)
        {
            wasOver |= bench.Add(10000 - (i * fallAStretch / 10), 1);
        }

        Assert.AreEqual(isOver, wasOver);
    }

    // Seven tenths of the onset are not enough.
    [TestMethod]
    [DataRow(6900, true)]
    [DataRow(7100, false)]
    public void LessThanSevenTenthsOfTheOnsetHaveComeDown(int level, bool isOver)
    {
        SurgeBench bench = new SurgeBench();
        bench.Add(10000, 3);
        Assert.AreEqual(isOver, bench.Add(level, TwoHalves + 2));
    }

    [TestMethod]
    public void WhatIsAboveTheCircuitIsASurgeHoweverLongItStands()
    {
        SurgeBench bench = new SurgeBench();
        bench.Watch.Circuit = 5005;
        Assert.IsFalse(bench.Add(5010, 200));
        Assert.IsTrue(bench.Add(5000, 1));
    }

    [TestMethod]
    [DataRow(14, true)]
    [DataRow(15, false)]
    public void WhatIsCutOffAtARailIsASurge(int percent, bool isOver)
    {
        SurgeBench bench = new SurgeBench();
        bench.AtRailPercent = percent;
        Assert.AreEqual(isOver, bench.Add(1000, SurgeWatch.StretchesToBelieve));
    }

    // A sixteenth in 60 ms is a climb, and half of that is none.
    [TestMethod]
    [DataRow(30, true)]
    [DataRow(8, false)]
    public void ASoftStartIsNotWaitedFor(int climbAStretch, bool isOver)
    {
        SurgeBench bench = new SurgeBench();
        bool wasOver = false;
        for (int i = 0; i < 15; i++)
        {
            wasOver |= bench.Add(1000 + (i * climbAStretch), 1);
        }

        Assert.AreEqual(isOver, wasOver);
    }

    // A tool that climbs to 1,500; then one that climbs as steeply, and further: it cuts, or is another one. What is known must
    // not hold it: without memory it is followed while it climbs.
    [TestMethod]
    [DataRow(0)]
    [DataRow(ToolBook.StartsToKnow)]
    public void AClimbAboveWhatIsKnownIsNotWaitedFor(int startsBefore)
    {
        SurgeBench bench = new SurgeBench();
        for (int start = 0; start < startsBefore; start++)
        {
            Climb(bench, 5);
            bench.Add(1500, TwoHalves);
            bench.Learn();
            bench.Begin();
        }

        Assert.IsTrue(Climb(bench, 8));
        Assert.AreEqual(startsBefore > 0, bench.Book.Find(bench.Watch.Seen.Height, bench.Watch.Seen.After));
        Assert.IsTrue(bench.Book.Highest < 1600);
    }

    // By half a percent in 0.2 s: it stands. By a twentieth: nobody knows yet what it comes to.
    [TestMethod]
    [DataRow(5, true)]
    [DataRow(50, false)]
    public void WhatStillClimbsIsNotRemembered(int climbAHalf, bool isLearned)
    {
        SurgeBench bench = new SurgeBench();
        for (int i = 0; i < 3 * SurgeWatch.Half; i++)
        {
            bench.Add(1000 + (i * climbAHalf / SurgeWatch.Half), 1);
        }

        bench.Learn();
        Assert.AreEqual(isLearned, bench.Book.Changes > 0);
    }

    // Up by half, at the end of a stretch: the motor of a tool whose lamp came first. The wait begins anew.
    [TestMethod]
    [DataRow(1490, false)]
    [DataRow(1510, true)]
    public void AStepUpIsANewOnset(int second, bool isNew)
    {
        SurgeBench bench = new SurgeBench();
        bench.Add(1000, 10);
        bench.Add(second, 1);
        Assert.AreEqual(!isNew, bench.Add(second, SurgeWatch.StretchesToBelieve - 11));
    }

    // Narrow pulses come and go in the readings. After three steps up no further one is taken for an onset.
    [TestMethod]
    public void WhatStepsUpAgainAndAgainIsNotWaitedForEachTime()
    {
        SurgeBench bench = new SurgeBench();
        int buckets = 0;
        while (buckets < 1600 && !bench.AddBucket(buckets / 40 % 2 == 0 ? 1000 : 2100))
        {
            buckets++;
        }

        Near.Between(300, buckets, 800);
    }

    // The last bucket of a stretch that shows more than twice as much as before is one as well.
    [TestMethod]
    [DataRow(1990, false)]
    [DataRow(2010, true)]
    public void AGreatStepIsSeenInABucket(int second, bool isNew)
    {
        SurgeBench bench = new SurgeBench();
        bench.Add(1000, 10);
        for (int i = 1; i < SwingWindow.Length; i++)
        {
            bench.AddBucket(1000);
        }

        bench.AddBucket(second);
        Assert.AreEqual(!isNew, bench.Add(1100, SurgeWatch.StretchesToBelieve - 11));
    }

    // The direct current of an offset makes an onset look a half higher than the plateau behind it. That is no knee.
    [TestMethod]
    [DataRow(0, true)]
    [DataRow(400, false)]
    public void WhatStoodOnAnOffsetHasNotComeDown(int offset, bool isOver)
    {
        SurgeBench bench = new SurgeBench();
        bench.Offset = offset;
        bench.Add(9000, 3);
        bench.Add(6000, 2);
        bench.Offset = 0;
        Assert.AreEqual(isOver, bench.Add(6000, TwoHalves - 1));
        Assert.IsTrue(bench.Add(6000, SurgeWatch.StretchesToBelieve));
    }

    [TestMethod]
    public void ATimesThreeStartIsKnownByItsOnset()
    {
        SurgeBench bench = new SurgeBench();
        for (int start = 0; start < ToolBook.StartsToKnow; start++)
        {
            bench.Begin();
            Assert.IsFalse(bench.Add(9000, 10));
            Assert.IsFalse(bench.Add(2000, TwoHalves - 1));
            Assert.IsTrue(bench.Add(2000, 1));
            bench.Learn();
        }

        // It came to 2,000 before: 2,125 are a sixteenth more, and must be kept for three stretches.
        bench.Begin();
        Assert.IsFalse(bench.Add(9100, 10));
        Assert.IsFalse(bench.Add(2128, 8));
        Assert.IsFalse(bench.Add(2050, 2));
        Assert.IsTrue(bench.Add(2050, 1));
    }

    // The same height is a heater's as well. Then neither is taken for the other before the ordinary wait is over.
    [TestMethod]
    public void WhereTwoToolsMayBeMeantTheLowerOneCounts()
    {
        SurgeBench bench = new SurgeBench();
        for (int start = 0; start < ToolBook.StartsToKnow; start++)
        {
            bench.Begin();
            bench.Add(9000, SurgeWatch.StretchesToBelieve);
            bench.Add(1500, TwoHalves);
            bench.Learn();
            bench.Begin();
            bench.Add(10000, SurgeWatch.StretchesToBelieve);
            bench.Learn();
        }

        bench.Begin();
        Assert.IsFalse(bench.Add(10000, SurgeWatch.StretchesToBelieve - 1));
        Assert.IsTrue(bench.Add(10000, 1));
    }

    // A heater of 1,000 is known. Another one is no surge of it: there is nothing that could fall by more than an eighth.
    [TestMethod]
    [DataRow(1120, true)]
    [DataRow(1130, false)]
    public void AnOnsetThatHardlyStandsAboveAKnownLevelIsNoSurge(int swing, bool isOver)
    {
        SurgeBench bench = new SurgeBench();
        for (int start = 0; start < ToolBook.StartsToKnow; start++)
        {
            bench.Begin();
            bench.Add(1000, SurgeWatch.StretchesToBelieve);
            bench.Learn();
        }

        bench.Begin();
        Assert.AreEqual(isOver, bench.Add(swing, 6));
    }

    // After the lamp of a tool comes its motor, every time: the lamp alone starts nothing.
    [TestMethod]
    public void TheFirstStageOfAKnownToolIsNotTheTool()
    {
        SurgeBench bench = new SurgeBench();
        for (int start = 0; start < ToolBook.StartsToKnow; start++)
        {
            bench.Begin();
            bench.Add(1000, 8);
            bench.Add(9000, 10);
            bench.Add(3000, TwoHalves);
            bench.Learn();
        }

        bench.Begin();
        Assert.IsFalse(bench.Add(1000, SurgeWatch.StretchesToBelieve - 1));
    }

    [TestMethod]
    public void WhatWasNoToolIsNotLearned()
    {
        SurgeBench bench = new SurgeBench();
        for (int start = 0; start < ToolBook.StartsToKnow; start++)
        {
            bench.Begin();
            bench.Add(1000, SurgeWatch.StretchesToBelieve);
            bench.Watch.End(false);
            Assert.IsFalse(bench.Watch.IsWatching);
        }

        Assert.IsFalse(bench.Book.Find(1000, 1000));
    }

    // Whatever it saw before a start, it decides as one that is new.
    [TestMethod]
    public void AStartForgetsWhatWasBefore()
    {
        for (int before = 1; before < 60; before += 7)
        {
            SurgeBench bench = new SurgeBench();
            bench.AtRailPercent = 40;
            for (int i = 0; i < before; i++)
            {
                bench.AddBucket(20000 + (500 * i));
            }

            bench.AtRailPercent = 0;
            bench.Begin();
            Assert.AreEqual(SurgeWatch.StretchesToBelieve, bench.ToTheEnd(10000));
        }
    }

    // Tells whether it was over at the last stretch.
    private static bool Climb(SurgeBench bench, int stretches)
    {
        bool isOver = false;
        for (int stretch = 0; stretch < stretches; stretch++)
        {
            isOver = bench.Add(1000 + (100 * stretch), 1);
        }

        return isOver;
    }
}
