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

    public readonly NoticeQueue Notices = new NoticeQueue();
    public readonly FeedbackWatch Watch;
    public bool IsProved;
    public long Now = 1000000;

    public ProbeBench()
    {
        Watch = new FeedbackWatch(Notices, FullScale);
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

    /// <summary>
    /// The relay closes twice, each time with a jump of the swing, and then time passes until the first probe begins.
    /// </summary>
    public void Suspect()
    {
        Close(Low);
        Hold(High, 100);
        Open();
        Close(Low);
        BucketsToProbe(High, 600);
    }

    /// <summary>
    /// A probe in which the current goes so many buckets after the command to open. Then the relay closes again, and time
    /// passes until the next probe begins.
    /// </summary>
    public void Probe(int buckets)
    {
        Hold(High, buckets - 1);
        Hold(0, 121);
        Again();
    }

    /// <summary>The relay closes after a probe, with a jump of the swing, and time passes until the next probe begins.</summary>
    private void Again()
    {
        Now += 500000;
        Close(0);

        // After a probe whose delay was not that of the one before, the watch waits twice as long as for the first probe.
        BucketsToProbe(High, 1200);
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
