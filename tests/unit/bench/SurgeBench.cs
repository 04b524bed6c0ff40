using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>A watch of start surges, fed with swings by the stretch of 20 ms.</summary>
internal sealed class SurgeBench
{
    public readonly ToolBook Book = new ToolBook();
    public readonly SurgeWatch Watch;

    /// <summary>How many of each hundred readings stand at a rail.</summary>
    public int AtRailPercent;

    /// <summary>Noise floor, a swing.</summary>
    public int Noise;

    /// <summary>By how many counts the mean of the readings is above its resting point.</summary>
    public int Offset;

    private readonly SwingWindow _window = Windows.Full();
    private readonly Bucket _bucket = new Bucket();

    public SurgeBench()
    {
        Watch = new SurgeWatch(Book);
        Begin();
    }

    /// <summary>A tool is seen; what is left out of an onset is behind it.</summary>
    public void Begin()
    {
        Watch.Begin(_bucket.EndTime);
        for (int i = 0; i < SurgeWatch.LeftOut; i++)
        {
            Assert.IsFalse(AddBucket(30000));
        }
    }

    /// <summary>The tool has stopped: what was seen of it is learned.</summary>
    public void Learn()
    {
        Watch.End(true);
        if (Watch.IsEnding)
        {
            Guesses.Learn(Book, Watch.Seen);
            Watch.End(false);
        }

        Assert.IsFalse(Watch.IsWatching);
    }

    /// <summary>Feeds stretches of a swing; after a step up what is left out of an onset is fed besides.</summary>
    /// <returns>Whether the surge was over at the last one.</returns>
    public bool Add(int swing, int stretches)
    {
        bool isOver = false;
        for (int i = 0; i < stretches * SwingWindow.Length; i++)
        {
            isOver = AddBucket(swing);
        }

        return isOver;
    }

    /// <summary>Feeds a bucket.</summary>
    /// <returns>Whether the surge is over.</returns>
    public bool AddBucket(int swing)
    {
        Windows.Add(_window, swing);
        for (int i = 0; i < _window.Means.Length; i++)
        {
            _window.Means[i] = 4 * Offset;
        }

        _bucket.EndTime += Bucket.Microseconds;
        _bucket.Count = 100;
        Watch.Clipped += AtRailPercent;
        if (_bucket.EndTime < Watch.NextLook)
        {
            return false;
        }

        // The board judges with the next bucket what it measures with this one.
        Watch.Accept(_bucket, _window, Noise);
        return Watch.Accept(_bucket, _window, Noise) && Watch.IsOver();
    }

    /// <summary>Feeds a swing until the surge is over.</summary>
    /// <returns>How many stretches that took; -1 where it took more than 100.</returns>
    public int ToTheEnd(int swing)
    {
        int stretches = 0;
        while (stretches < 100)
        {
            stretches++;
            if (Add(swing, 1))
            {
                return stretches;
            }
        }

        return -1;
    }
}
