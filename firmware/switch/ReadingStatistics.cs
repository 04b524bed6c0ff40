using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>How fast the readings come and how large the gaps between buckets are.</summary>
public sealed class ReadingStatistics
{
    private int _readings;
    private long _second;
    private long _lastEnd;
    private int _buckets;
    private bool _notesSpread;
    private int _moved;
    private int _lastLeast = -1;

    /// <summary>Readings in the last whole second.</summary>
    public int ASecond;

    /// <summary>Longest time without a bucket since the board came up, in microseconds.</summary>
    public int WorstGap;

    /// <summary>Least reading since <see cref="StartSpread"/>.</summary>
    public int Least;

    /// <summary>Greatest reading since <see cref="StartSpread"/>.</summary>
    public int Greatest;

    /// <summary>Gets how many of the low bits have been seen to move since <see cref="StartSpread"/>; a dead one stays out.</summary>
    public int MovingBits
    {
        get
        {
            int count = 0;
            for (int bits = _moved; (bits & 1) != 0; bits >>= 1)
            {
                count++;
            }

            return count;
        }
    }

    /// <summary>Begins to note the spread of the readings.</summary>
    public void StartSpread()
    {
        Least = int.MaxValue;
        Greatest = int.MinValue;
        _moved = 0;
        _lastLeast = -1;
        _notesSpread = true;
    }

    /// <summary>Ends it.</summary>
    public void EndSpread()
    {
        _notesSpread = false;
    }

    /// <summary>Takes a bucket.</summary>
    /// <param name="bucket">The bucket.</param>
    public void Accept(Bucket bucket)
    {
        long now = bucket.EndTime;
        if (now - _lastEnd != Bucket.Microseconds)
        {
            NoteGap(now - _lastEnd - Bucket.Microseconds);
        }

        _lastEnd = now;
        _readings += bucket.Count;
        if (++_buckets == Bucket.ASecond)
        {
            ASecond = (int)(_readings * 1000000L / (now - _second));
            _second = now;
            _readings = 0;
            _buckets = 0;
        }

        if (_notesSpread)
        {
            NoteSpread(bucket);
        }
    }

    private void NoteGap(long gap)
    {
        if (_lastEnd != 0 && gap > WorstGap)
        {
            WorstGap = gap > int.MaxValue ? int.MaxValue : (int)gap;
        }
    }

    private void NoteSpread(Bucket bucket)
    {
        if (bucket.Count == 0)
        {
            return;
        }

        // Least and greatest are readings themselves, so their bits are the converter's.
        _moved |= bucket.Least ^ bucket.Greatest;
        if (_lastLeast >= 0)
        {
            _moved |= bucket.Least ^ _lastLeast;
        }

        _lastLeast = bucket.Least;
        Least = bucket.Least < Least ? bucket.Least : Least;
        Greatest = bucket.Greatest > Greatest ? bucket.Greatest : Greatest;
    }
}
