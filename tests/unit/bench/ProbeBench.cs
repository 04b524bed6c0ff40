using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>
/// A feedback watch under test that is given every bucket's swing by the test itself. There is no relay and no delay but what
/// the test plays. Swings are in sixteenths of a count.
/// </summary>
internal sealed class ProbeBench
{
    public const int Least = 400;
    public const int FullScale = 4095;

    /// <summary>Swing before the relay closes, and with the vacuum running.</summary>
    public const int Low = 1000;
    public const int High = 7000;

    public readonly NoticeQueue Told = new NoticeQueue();
    public readonly FeedbackWatch Watch;
    public bool IsProved;
    public long Now = 1000000;

    public ProbeBench()
    {
        Watch = new FeedbackWatch(Told, FullScale);
    }

    public void Close(int before)
    {
        Watch.NoteClosing(before, Least, Now);
    }

    /// <summary>The relay opens and stays open for a second.</summary>
    public void Open()
    {
        Watch.NoteOpening(Now);
        Now += 1000000;
    }

    /// <summary>The swing is the same for so many buckets.</summary>
    public void Hold(int swing, int buckets)
    {
        for (int i = 0; i < buckets; i++)
        {
            Step(swing, true);
        }
    }

    public void Void()
    {
        Step(0, false);
    }

    /// <summary>The swing stays the same until a probe begins, but for no more than so many buckets.</summary>
    /// <returns>How many buckets it took; -1 when no probe began.</returns>
    public int BucketsToProbe(int swing, int most)
    {
        for (int i = 1; i <= most; i++)
        {
            Step(swing, true);
            if (Watch.IsProbing)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Two closings, of which the first has a jump.</summary>
    public static ProbeBench ClosedTwice()
    {
        ProbeBench bench = new ProbeBench();
        bench.Close(Low);
        bench.Hold(High, 100);
        bench.CloseAgain(Low);
        return bench;
    }

    /// <summary>Two closings with a jump, and the time until the first probe begins.</summary>
    public static ProbeBench Suspected()
    {
        ProbeBench bench = ClosedTwice();
        bench.BucketsToProbe(High, 600);
        return bench;
    }

    /// <summary>One probe has shown nothing, and the relay has closed again; the next wait is 3 s.</summary>
    public static ProbeBench Failed(int before = 0)
    {
        ProbeBench bench = Suspected();
        bench.Fail(before);
        return bench;
    }

    /// <summary>The relay opens, rests for a second and closes.</summary>
    public void CloseAgain(int before)
    {
        Open();
        Close(before);
    }

    /// <summary>A probe that shows nothing, and the closing after it.</summary>
    public void Fail(int before)
    {
        Hold(High, 240);
        Assert.IsFalse(Watch.IsProbing);
        Now += 500000;
        Close(before);
    }

    /// <summary>
    /// A probe in which the current goes so many buckets after the command, the closing after it with a jump, and the wait until
    /// the next begins.
    /// </summary>
    /// <returns>Whether it is proved now.</returns>
    public bool Probe(int buckets)
    {
        Hold(High, buckets - 1);
        Hold(0, 121);
        Now += 500000;
        Close(0);

        // After a probe whose delay was not that of the one before, the watch waits twice as long as for the first probe.
        BucketsToProbe(High, 1200);
        return IsProved;
    }

    /// <summary>The probe has ended: whether the current went with it, and when.</summary>
    public void CheckProbed(int hasGone, int milliseconds)
    {
        Assert.IsFalse(Watch.IsProbing);
        Notices.Check(Told, NoticeKind.Probed, hasGone, 0, milliseconds, Now);
    }

    private void Step(int swing, bool isValid)
    {
        Now += Bucket.Microseconds;
        if (Watch.IsWatching && Watch.Accept(swing, isValid, Now))
        {
            IsProved = true;
        }
    }
}
