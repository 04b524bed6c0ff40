using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// Any readings, any steps of time and any events, from a fixed seed: what must hold does hold after every bucket.
[TestClass]
public class AnythingHappensTests
{
    private const int Buckets = 40000;

    [TestMethod]
    [DataRow(1)]
    [DataRow(2)]
    [DataRow(3)]
    [DataRow(4)]
    public void TheRelayIsClosedOnlyWhenItMay(int seed)
    {
        Dice dice = new Dice(seed);
        DetectionCore core = New();
        Bucket bucket = new Bucket();
        bool wasClosed = false;
        long openedAt = 0;
        int closings = 0;
        for (int i = 0; i < Buckets; i++)
        {
            long before = bucket.EndTime;
            Play(dice, core, bucket);
            if (core.IsRelayClosed)
            {
                Assert.IsFalse(core.Faults.HoldsOff);
                Assert.IsTrue(core.Vacuum.WantsVacuum);
            }

            if (core.IsRelayClosed && !wasClosed)
            {
                closings++;
                Assert.IsTrue(bucket.EndTime - openedAt >= 500000);
            }
            else if (!core.IsRelayClosed && wasClosed)
            {
                openedAt = before;
            }

            wasClosed = core.IsRelayClosed;
        }

        // Else nothing was tried.
        Assert.IsTrue(closings > 10, closings.ToString());
    }

    [TestMethod]
    [DataRow(5)]
    [DataRow(6)]
    public void TheSameBucketsAndEventsGiveTheSameDecisions(int seed)
    {
        Dice one = new Dice(seed);
        Dice other = new Dice(seed);
        DetectionCore first = New();
        DetectionCore second = New();
        Bucket bucket = new Bucket();
        Bucket again = new Bucket();
        for (int i = 0; i < Buckets; i++)
        {
            Play(one, first, bucket);
            Play(other, second, again);
            Assert.AreEqual(first.IsRelayClosed, second.IsRelayClosed);
            Assert.AreEqual(first.SwingMilliamperes, second.SwingMilliamperes);
            Assert.AreEqual((int)first.Vacuum.State, (int)second.Vacuum.State);
        }
    }

    [TestMethod]
    [DataRow(7)]
    [DataRow(8)]
    public void AStateNeverSpeaksAgainstTheFacts(int seed)
    {
        Dice dice = new Dice(seed);
        VacuumControl control = new VacuumControl(CoreBench.Settings(), new NoticeQueue());
        long now = 0;
        bool isRunning = false;
        bool isHeldOff = false;
        for (int i = 0; i < 200000; i++)
        {
            now += dice.Below(3000000);
            if (dice.Below(10) == 0)
            {
                control.Handle((VacuumEvent)(3 + dice.Below(4)), now);
            }
            else
            {
                isRunning = dice.Below(3) == 0 ? !isRunning : isRunning;
                isHeldOff = dice.Below(8) == 0 ? !isHeldOff : isHeldOff;
                control.Update(isRunning, isHeldOff, now);
            }

            string state = Words.Of(control.State);
            Assert.IsFalse(isHeldOff && (control.WantsVacuum || state == "idle" || state == "starting"), state);
            Assert.IsFalse(!isHeldOff && state == "fault", state);
            Assert.IsFalse(isRunning && (state == "idle" || state == "run-on"), state);
            Assert.IsFalse(!isRunning && (state == "starting" || state == "on" || state == "until-stop"), state);
        }
    }

    private static DetectionCore New()
    {
        return new DetectionCore(new ConverterScale(4095, 806, 850, 1750), CoreBench.Settings(), 0);
    }

    // Mostly ordinary buckets of a tool or of none, with now and then something else.
    private static void Play(Dice dice, DetectionCore core, Bucket bucket)
    {
        int kind = dice.Below(1000);
        if (kind == 0)
        {
            core.Handle((VacuumEvent)(3 + dice.Below(4)), bucket.EndTime);
        }
        else if (kind == 1)
        {
            core.Faults.Clear(bucket.EndTime);
        }
        else if (kind == 2)
        {
            core.LoseRelay(200, bucket.EndTime);
        }

        bucket.EndTime += kind == 3 ? dice.Below(2000000) : Bucket.Microseconds;
        bucket.Count = kind < 10 ? dice.Below(3) : 5;
        bool isRunning = bucket.EndTime / 3000000 % 2 == 0;
        int level = 1576 + (isRunning ? (int)(300 * Sine.Of(bucket.EndTime / 20000.0)) : 0);
        level = kind == 4 ? dice.Below(4096) : level;
        bucket.Sum = level * bucket.Count;
        bucket.Least = level - 1;
        bucket.Greatest = level + 1;
        bucket.Failed = kind == 5 ? dice.Below(20) : 0;
        core.Accept(bucket);
        while (core.Notices.Take() != null)
        {
        }
    }

    // A linear congruential generator; its numbers are those of Numerical Recipes (from memory).
    private sealed class Dice
    {
        private uint _state;

        public Dice(int seed)
        {
            _state = (uint)seed;
        }

        public int Below(int limit)
        {
            _state = (_state * 1664525u) + 1013904223u;
            return (int)((_state >> 4) % (uint)limit);
        }
    }
}
