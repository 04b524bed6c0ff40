using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>A feedback watch that is told every swing by the test, to the bucket; no relay and no delays of its own.</summary>
internal sealed class ProbeBench
{
    public const int Least = 400;
    public const int FullScale = 4095;

    /// <summary>What runs before a closing, and with the vacuum.</summary>
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

    /// <summary>The relay opens, and rests for a second.</summary>
    public void Open()
    {
        Watch.NoteOpening(Now);
        Now += 1000000;
    }

    /// <summary>A swing for so many buckets.</summary>
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

    /// <summary>Buckets of a swing until a probe begins.</summary>
    /// <returns>How many; -1 when none begins in so many.</returns>
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

    /// <summary>Two closings with a jump, and the time until the first probe begins.</summary>
    public void Suspect()
    {
        Close(Low);
        Hold(High, 100);
        Open();
        Close(Low);
        BucketsToProbe(High, 600);
    }

    /// <summary>
    /// A probe in which the current goes so many buckets after the command, and the closing and the wait after it.
    /// </summary>
    public void Probe(int buckets)
    {
        Hold(High, buckets - 1);
        Hold(0, 121);
        Again();
    }

    /// <summary>The closing after a probe, with a jump, and the wait until the next begins.</summary>
    private void Again()
    {
        Now += 500000;
        Close(0);

        // One that was not like the one before has left the next wait at twice the first.
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
