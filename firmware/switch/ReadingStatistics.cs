using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>How fast the readings come and how large the gaps between buckets are.</summary>
public sealed class ReadingStatistics
{
    private int _readings;
    private long _second;
    private long _lastEnd;

    /// <summary>Readings in the last whole second.</summary>
    public int ASecond;

    /// <summary>Longest time without a bucket since the board came up, in microseconds.</summary>
    public int WorstGap;

    /// <summary>Takes a bucket.</summary>
    /// <param name="bucket">The bucket.</param>
    public void Accept(Bucket bucket)
    {
        long now = bucket.EndTime;
        long gap = now - _lastEnd - Bucket.Microseconds;
        if (_lastEnd != 0 && gap > WorstGap)
        {
            WorstGap = gap > int.MaxValue ? int.MaxValue : (int)gap;
        }

        _lastEnd = now;
        _readings += bucket.Count;
        if (now - _second >= 1000000)
        {
            ASecond = (int)(_readings * 1000000L / (now - _second));
            _second = now;
            _readings = 0;
        }
    }
}
