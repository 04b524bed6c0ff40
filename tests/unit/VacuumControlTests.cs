using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class VacuumControlTests
{
    private const long Second = Time.Second;

    // Buckets until a current that never fell is believed to have no surge, the one after, which judges that, and the one that
    // acts upon it.
    private const int FirstAnswer = SurgeWatch.LeftOut + (SurgeWatch.StretchesToBelieve * SwingWindow.Length) + 2;

    [TestMethod]
    public void TheVacuumIsWantedInThreeStatesOnly()
    {
        VacuumControl control = New();
        for (int i = 0; i < VacuumTable.States; i++)
        {
            control.State = (VacuumState)i;
            control.Use(new SettingValues().ToCore());
            bool isOn = control.State == VacuumState.On || control.State == VacuumState.RunOn
                || control.State == VacuumState.ByHand;
            Assert.AreEqual(isOn, control.WantsVacuum);
        }
    }

    // What happens at which second, and the state after each.
    [TestMethod]

    // A tool that runs at the end of a hold or a fault starts the vacuum by the ordinary delay.
    [DataRow("0 hold, 1 tool, 2 tool, 2 auto", "held, held, held, starting")]
    [DataRow("0 auto, 1 tool and fault, 2 tool, 2 auto", "idle, fault, starting, starting")]

    // A hold released during a fault goes to the fault.
    [DataRow("1 fault, 2 hold, 3 auto", "fault, held, fault")]

    // Off by hand without a tool is idle; with one it lasts until the tool stops, and is no end of the longest run.
    [DataRow("1 hand on, 2 hand off, 3 tool", "by-hand, idle, starting")]
    [DataRow("1 tool, 2 hand off, 100 tool, 101 no tool", "starting, until-stop, until-stop, idle")]

    // Back to auto while the tool runs does not drop the vacuum.
    [DataRow("1 hand on, 2 tool, 3 auto", "by-hand, by-hand, on")]

    // Neither a hand nor a wait gets past a fault that lasts.
    [DataRow("1 tool and fault, 2 hand on, 3 hand off, 4 hand on", "fault, fault, until-stop, fault")]
    [DataRow("1 tool and fault, 5 hand off, 6 auto, 7 hand off", "fault, until-stop, fault, until-stop")]
    [DataRow("1 tool and fault, 7 hand off, 8 fault, 9 no tool", "fault, until-stop, fault, idle")]
    public void OneThingAfterTheOther(string happens, string states)
    {
        VacuumControl control = New();
        string all = "";
        string[] steps = happens.Split(',');
        for (int i = 0; i < steps.Length; i++)
        {
            string step = steps[i].Trim();
            int blank = step.IndexOf(' ');
            long now = int.Parse(step.Substring(0, blank)) * Second;
            string what = step.Substring(blank + 1);
            if (what.IndexOf("tool") >= 0 || what == "fault")
            {
                control.Update(what.StartsWith("tool"), what.IndexOf("fault") >= 0, now);
            }
            else
            {
                control.Handle(Words.Event(what), now);
            }

            all += (i == 0 ? "" : ", ") + Words.Of(control.State) + (control.RanTooLong ? ", which ran too long" : "");
        }

        Assert.AreEqual(states, all);
    }

    [TestMethod]
    public void OnByHandAgainCountsItsLimitAnew()
    {
        VacuumControl control = New();
        control.Handle(VacuumEvent.HandOn, 0);
        control.Handle(VacuumEvent.HandOn, 600 * Second);
        Assert.AreEqual(1800 * Second, control.Remaining(600 * Second));
    }

    [TestMethod]
    public void RemainingIsMinusOneInAStateWithoutAnEnd()
    {
        VacuumControl control = New();
        Assert.AreEqual(-1L, control.Remaining(Second));
        control.Handle(VacuumEvent.HandOn, Second);
        Assert.AreEqual(0L, control.Remaining(9999 * Second));
    }

    [TestMethod]
    [DataRow("idle", "hand on")]
    [DataRow("starting", "hand off")]
    [DataRow("on", "hand off")]
    [DataRow("run-on", "hand off")]
    [DataRow("by-hand", "hand off")]
    [DataRow("until-stop", "hand on")]
    public void AShortPressAsksForTheOtherOfOnAndOff(string state, string asked)
    {
        VacuumControl control = New();
        control.State = Words.State(state);
        control.Use(new SettingValues().ToCore());
        Assert.AreEqual(asked, Words.Of(control.ShortPress()));
    }

    [TestMethod]
    public void OnlyStartsByTheSwitchItselfAreCounted()
    {
        VacuumControl control = New();
        control.Handle(VacuumEvent.HandOn, Second);
        control.Handle(VacuumEvent.HandOff, 2 * Second);
        Assert.AreEqual(0, control.Starts.Total);
        control.Update(true, false, 3 * Second);
        control.Update(true, false, 60 * Second);
        Assert.AreEqual("on", Words.Of(control.State));
        Assert.AreEqual(1, control.Starts.Total);

        // The tool's restart during the run-on is no start of the vacuum.
        control.Update(false, false, 61 * Second);
        control.Update(true, false, 62 * Second);
        Assert.AreEqual("on", Words.Of(control.State));
        Assert.AreEqual(1, control.Starts.Total);
    }

    [TestMethod]
    public void ARunOnThatIsCountingTakesANewSettingFromItsBeginning()
    {
        VacuumControl control = New();
        control.Update(true, false, Second);
        control.Update(true, false, 10 * Second);
        control.Update(false, false, 20 * Second);
        control.Use(CoreBench.Settings(runOn: 30000));
        Assert.AreEqual(26 * Second, control.Remaining(24 * Second));
    }

    // A tool with five sixths of the level's power is still one; with less it was only a surge.
    [TestMethod]
    [DataRow(1095, false)]
    [DataRow(1096, true)]
    public void AfterASurgeThatWhichIsLeftDecides(int start, bool isBrief)
    {
        VacuumControl control = Surging();
        SwingWindow window = Windows.Full();
        for (int i = 1; i < FirstAnswer; i++)
        {
            Assert.IsFalse(Look(control, window, Second + (i * Bucket.Microseconds), 1000, start));
            Assert.AreEqual("starting", Words.Of(control.State));
        }

        Assert.AreEqual(isBrief, IsGivenUp(control, window, FirstAnswer, 1000, 1000, start));
        Assert.AreEqual(isBrief ? "starting" : "on", Words.Of(control.State));
        Assert.AreEqual(!isBrief, control.WantsVacuum);
    }

    // A swing that ripples between 600 and 1000: its greatest counts, up to a thirty-second below the level. Between 800 and 1000
    // the root of its mean power counts, as that of a sine does.
    [TestMethod]
    [DataRow(600, 1032, false)]
    [DataRow(600, 1033, true)]
    [DataRow(800, 986, false)]
    [DataRow(800, 995, true)]
    public void OfASwingThatRipplesTheGreatestCounts(int least, int start, bool isBrief)
    {
        VacuumControl control = Surging();
        SwingWindow window = Windows.Full();
        for (int i = 1; i < FirstAnswer; i++)
        {
            int swing = (i & 1) == 0 ? 1000 : least;
            Assert.IsFalse(Look(control, window, Second + (i * Bucket.Microseconds), swing, start));
        }

        Assert.AreEqual(isBrief, IsGivenUp(control, window, FirstAnswer, 1000, least, start));
    }

    // The pulses of a tool of 1000 ripple, and by chance hardly show for the 20 ms in which it is judged: it is no lamp, and is
    // looked at again. What shows as little ever after is one.
    [TestMethod]
    [DataRow(600, false)]
    [DataRow(880, true)]
    public void OneStretchAloneDoesNotMakeALampOfATool(int least, bool isBrief)
    {
        VacuumControl control = Surging();
        SwingWindow window = Windows.Full();
        bool isOver = false;
        for (int i = 1; i < FirstAnswer + (5 * SwingWindow.Length) && !isOver; i++)
        {
            bool isLast = i >= FirstAnswer - SwingWindow.Length && i <= FirstAnswer;
            int swing = isLast || least == 880 ? 880 : (i & 1) == 0 ? 1000 : least;
            isOver = Look(control, window, Second + (i * Bucket.Microseconds), swing, 1000);
        }

        Assert.AreEqual(isBrief, isOver);
    }

    // Noise may hide a tenth of a tool in three looks that follow each other, but not in four.
    [TestMethod]
    [DataRow(3, false)]
    [DataRow(4, true)]
    public void ALampIsOneAtTheFourthLook(int looks, bool isBrief)
    {
        VacuumControl control = Surging();
        SwingWindow window = Windows.Full();
        bool isGivenUp = false;
        int less = 0;
        for (int i = 1; !isGivenUp && !control.WantsVacuum; i++)
        {
            long nextLook = control.Surge.NextLook;
            isGivenUp = Look(control, window, Second + (i * Bucket.Microseconds), 1000, less < looks ? 1200 : 1000);
            less += i >= FirstAnswer && control.Surge.NextLook > nextLook + Bucket.Microseconds ? 1 : 0;
        }

        Assert.AreEqual(isBrief, isGivenUp);
    }

    [TestMethod]
    public void ASurgeIsWaitedForNoLongerThanThreeSeconds()
    {
        VacuumControl control = Surging();
        SwingWindow window = Windows.Full();
        int swing = 60000;
        for (int i = 1; i < 1200; i++)
        {
            swing -= swing / 400;
            Assert.IsFalse(Look(control, window, Second + (i * Bucket.Microseconds), swing, 100));

            // The time alone decides nothing: its end is judged by the swing.
            control.Update(true, false, Second + (i * Bucket.Microseconds));
            Assert.AreEqual("starting", Words.Of(control.State));
            Assert.IsTrue(control.IsWaitingForSurge);
        }

        control.Update(true, false, 5 * Second);
        Assert.AreEqual("starting", Words.Of(control.State));
        Assert.IsFalse(Look(control, window, 4 * Second, swing, 100));
        Assert.AreEqual("on", Words.Of(control.State));
        Assert.IsFalse(control.IsWaitingForSurge);
    }

    [TestMethod]
    public void WhereNoSurgeIsWaitedForNoneIsJudged()
    {
        VacuumControl control = New();
        SwingWindow window = Windows.Full();
        control.Update(true, false, Second);
        for (int i = 0; i < 2 * FirstAnswer; i++)
        {
            Assert.IsFalse(Look(control, window, (100 * Second) + (i * Bucket.Microseconds), 1, 5000));
        }

        Assert.AreEqual("starting", Words.Of(control.State));
    }

    [TestMethod]
    public void TheSurgeIsWatchedAnewAtEveryStart()
    {
        VacuumControl control = Surging();
        SwingWindow window = Windows.Full();
        for (int i = 1; i < FirstAnswer; i++)
        {
            Look(control, window, Second + (i * Bucket.Microseconds), 1000, 500);
        }

        control.Update(false, false, 2 * Second);
        control.Update(true, false, 3 * Second);
        for (int i = 1; i < FirstAnswer; i++)
        {
            Assert.IsFalse(Look(control, window, (3 * Second) + (i * Bucket.Microseconds), 1000, 500));
            Assert.AreEqual("starting", Words.Of(control.State));
        }
    }

    // What is on the line after the go is watched until three seconds after the start, and then known.
    [TestMethod]
    public void AToolIsLearnedUntilTheLongestSurgeWouldBeOver()
    {
        VacuumControl control = Surging();
        SwingWindow window = Windows.Full();
        for (int start = 0; start < ToolBook.StartsToKnow; start++)
        {
            long begin = (10 * start * Second) + Second;
            control.Update(true, false, begin);
            for (int i = 1; i < 1200; i++)
            {
                Assert.IsTrue(control.Surge.IsWatching);
                Look(control, window, begin + (i * Bucket.Microseconds), i < 600 ? 5000 : 1000, 100);
            }

            Assert.AreEqual("on", Words.Of(control.State));
            Look(control, window, begin + (3 * Second), 1000, 100);
            Assert.IsTrue(control.Surge.IsEnding);
            Guesses.Learn(control.Book, control.Surge.Seen);
            control.Surge.End(false);
            Assert.IsFalse(control.Surge.IsWatching);
            control.Update(false, false, begin + (4 * Second));
            control.Update(false, false, begin + (9 * Second));
            Assert.AreEqual("idle", Words.Of(control.State));
        }

        Assert.IsTrue(control.Book.Find(5000, 5000));
        Assert.AreEqual(1000, control.Book.Lowest);
    }

    [TestMethod]
    public void ABurstThatWasNotFollowedIsToldASecondLaterOnceAMinute()
    {
        NoticeQueue notices = new NoticeQueue();
        VacuumControl control = new VacuumControl(CoreBench.AfterSurge(), notices);
        for (int i = 0; i < 7; i++)
        {
            long begin = (11 * i * Second) + Second;
            control.Update(true, false, begin);
            control.Update(false, false, begin + (65 * Time.Millisecond));
            Forget(notices);
            Assert.AreEqual(i % 6 == 0 ? begin + Second + (65 * Time.Millisecond) : long.MaxValue, control.NextLook);
            control.Update(false, false, begin + (1064 * Time.Millisecond));
            Assert.AreEqual(0, notices.Count);
            control.Update(false, false, begin + (1065 * Time.Millisecond));
            if (i % 6 == 0)
            {
                Notices.Check(notices, NoticeKind.Burst, 0, 0, 65, begin + (1065 * Time.Millisecond));
            }

            Assert.AreEqual(0, notices.Count);
        }
    }

    // Electronics draw a burst, their motor starts a moment later.
    [TestMethod]
    public void ABurstBeforeAToolIsNotTold()
    {
        NoticeQueue notices = new NoticeQueue();
        VacuumControl control = new VacuumControl(CoreBench.Settings(startDelay: 300), notices);
        control.Update(true, false, Second);
        control.Update(false, false, Second + (65 * Time.Millisecond));
        control.Update(true, false, 2 * Second);
        control.Update(true, false, 4 * Second);
        control.Update(false, false, 5 * Second);
        control.Update(false, false, 20 * Second);
        Notice notice = notices.Take();
        while (notice != null)
        {
            Assert.AreEqual((int)NoticeKind.StateChanged, (int)notice.Kind);
            notice = notices.Take();
        }
    }

    [TestMethod]
    public void TheEndOfTheLongestRunIsAnnouncedOnceTenMinutesBefore()
    {
        NoticeQueue notices = new NoticeQueue();
        VacuumControl control = OnWithATool(notices, 1200000);
        Assert.AreEqual(612 * Second, control.NextLook);
        control.Update(true, false, (612 * Second) - 1);
        Assert.AreEqual(0, notices.Count);
        control.Update(true, false, 612 * Second);
        Notices.Check(notices, NoticeKind.LongRunAhead, 0, 0, 600, 612 * Second);
        Assert.AreEqual(1212 * Second, control.NextLook);
        control.Update(true, false, 700 * Second);
        Assert.AreEqual(0, notices.Count);
        Assert.AreEqual("on", Words.Of(control.State));

        // In the next run again; a late look says what is left.
        control.Update(false, false, 701 * Second);
        control.Update(true, false, 702 * Second);
        Assert.AreEqual(1302 * Second, control.NextLook);
        Forget(notices);
        control.Update(true, false, 1800 * Second);
        Assert.AreEqual(102, notices.Take().Figure);
    }

    [TestMethod]
    public void TheLongestRunEndsTheVacuumAndSaysThatItWasThat()
    {
        VacuumControl control = OnWithATool(new NoticeQueue(), 1200000);
        control.Update(true, false, (1212 * Second) - 1);
        Assert.AreEqual("on", Words.Of(control.State));
        Assert.AreEqual(1L, control.Remaining((1212 * Second) - 1));
        control.Update(true, false, 1212 * Second);
        Assert.AreEqual("until-stop", Words.Of(control.State));
        Assert.IsTrue(control.RanTooLong);
        Assert.AreEqual(long.MaxValue, control.NextLook);
        control.Handle(VacuumEvent.Hold, 1213 * Second);
        Assert.IsFalse(control.RanTooLong);
    }

    [TestMethod]
    public void ALongestRunOfNoughtIsNeitherAnnouncedNorEnded()
    {
        NoticeQueue notices = new NoticeQueue();
        VacuumControl control = OnWithATool(notices, 0);
        Assert.AreEqual(long.MaxValue, control.NextLook);
        Assert.AreEqual(-1L, control.Remaining(13 * Second));
        control.Update(true, false, 1000000 * Second);
        Assert.AreEqual(0, notices.Count);
        Assert.AreEqual("on", Words.Of(control.State));
    }

    // At the most starts a minute the run-on lasts a minute, unless it does so anyway.
    [TestMethod]
    [DataRow(6, 5000, false)]
    [DataRow(5, 5000, true)]
    [DataRow(5, 59999, true)]
    [DataRow(5, 60000, false)]
    public void ManyStartsStretchTheRunOn(int startsAMinute, int runOn, bool isStretched)
    {
        CoreSettings settings = CoreBench.Settings(startsAMinute: startsAMinute, runOn: runOn);
        VacuumControl control = new VacuumControl(settings, new NoticeQueue());
        for (int i = 0; i < 5; i++)
        {
            control.Update(true, false, Second + (i * 2 * Second));
            control.Update(true, false, Second + (i * 2 * Second));
            Assert.AreEqual("on", Words.Of(control.State));
            Assert.AreEqual(i + 1, control.Starts.Total);
            control.Handle(VacuumEvent.HandOff, (2 * Second) + (i * 2 * Second));
            control.Update(i == 4, false, (2 * Second) + (i * 2 * Second));
        }

        control.Handle(VacuumEvent.Auto, 11 * Second);
        control.Handle(VacuumEvent.HandOn, 11 * Second);
        control.Handle(VacuumEvent.Auto, 11 * Second);
        control.Update(false, false, 12 * Second);
        Assert.AreEqual("run-on", Words.Of(control.State));
        Assert.AreEqual(isStretched, control.IsStretched);
        Assert.AreEqual(isStretched ? 60 * Second : runOn * 1000L, control.Remaining(12 * Second));
    }

    [TestMethod]
    public void EveryChangeIsToldWithWhatWasWhatIsAndWhy()
    {
        NoticeQueue notices = new NoticeQueue();
        VacuumControl control = new VacuumControl(CoreBench.Settings(), notices);
        control.Update(true, false, 5 * Second);
        Assert.AreEqual(5 * Second, control.Since);
        const int Starting = (int)VacuumState.Starting;
        Notices.Check(
            notices, NoticeKind.StateChanged, (int)VacuumState.Idle, Starting, (int)VacuumEvent.ToolStarted, 5 * Second);

        // A start delay of nought ends in the same look.
        Notices.Check(
            notices, NoticeKind.StateChanged, Starting, (int)VacuumState.On, (int)VacuumEvent.TimeUp, 5 * Second);
        control.Update(true, false, 6 * Second);
        Assert.AreEqual(0, notices.Count);
        Assert.AreEqual(5 * Second, control.Since);
    }

    [TestMethod]
    public void TheNextLookIsAtTheEndOfTheState()
    {
        VacuumControl control = New();
        Assert.AreEqual(long.MaxValue, control.NextLook);
        control.Update(true, false, Second);
        Assert.AreEqual(2 * Second, control.NextLook);
        control.Update(true, false, 2 * Second);
        control.Update(false, false, 3 * Second);
        Assert.AreEqual(control.Remaining(3 * Second) + (3 * Second), control.NextLook);
        Assert.AreEqual(long.MaxValue, Surging().NextLook);
    }

    private static void Forget(NoticeQueue notices)
    {
        while (notices.Take() != null)
        {
        }
    }

    // The tool began to run at 12 s.
    private static VacuumControl OnWithATool(NoticeQueue notices, int longestRun)
    {
        VacuumControl control = new VacuumControl(CoreBench.Settings(longestRun: longestRun), notices);
        control.Update(true, false, 12 * Second);
        control.Update(true, false, 12 * Second);
        Assert.AreEqual("on", Words.Of(control.State));
        Forget(notices);
        return control;
    }

    // The tool began to run at 1 s.
    private static VacuumControl Surging()
    {
        VacuumControl control = new VacuumControl(CoreBench.AfterSurge(), new NoticeQueue());
        control.Update(true, false, Second);
        return control;
    }

    // Feeds a bucket, and looks at the surge where that is due.
    private static bool Look(VacuumControl control, SwingWindow window, long now, int swing, int start)
    {
        Windows.Add(window, swing);
        Bucket bucket = new Bucket();
        bucket.EndTime = now;
        ToolLevels levels = new ToolLevels();
        levels.Use(start, start / 2);
        levels.Begin(0, 0, new StandingLoad());
        levels.Complete(0, 0, new StandingLoad());
        return now >= control.Surge.NextLook && control.IsBriefSurge(bucket, window, 0, levels);
    }

    // Goes on with two swings in turn, until the start is given up or the vacuum is on.
    private static bool IsGivenUp(VacuumControl control, SwingWindow window, int from, int even, int odd, int start)
    {
        bool isGivenUp = false;
        for (int i = from; !isGivenUp && !control.WantsVacuum; i++)
        {
            isGivenUp = Look(control, window, Second + (i * Bucket.Microseconds), (i & 1) == 0 ? even : odd, start);
        }

        return isGivenUp;
    }

    private static VacuumControl New()
    {
        return new VacuumControl(CoreBench.Settings(startDelay: 1000), new NoticeQueue());
    }
}
