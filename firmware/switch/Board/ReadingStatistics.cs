using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>How fast the readings come and how large the gaps between buckets are.</summary>
public sealed class ReadingStatistics
{
    private long _second;
    private int _moved;
    private int _lastLeast = -1;

    /// <summary>Readings in the second under way.</summary>
    public int Count;

    /// <summary>Whether the spread of the readings is noted.</summary>
    public bool NotesSpread;

    /// <summary>Readings in the last whole second.</summary>
    public int ASecond;

    /// <summary>Longest time without a bucket since the board came up, in microseconds.</summary>
    public int WorstGapMicroseconds;

    /// <summary>Least reading since <see cref="StartSpread"/>.</summary>
    public int Least;

    /// <summary>Greatest reading since <see cref="StartSpread"/>.</summary>
    public int Greatest;

    /// <summary>Gets how many of the converter's bits have been seen to move since <see cref="StartSpread"/>; a dead one stays out.</summary>
    public int MovingBits
    {
        get
        {
            int count = 0;
            for (int bits = _moved; bits != 0; bits >>= 1)
            {
                count += bits & 1;
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
        NotesSpread = true;
    }

    /// <summary>Ends it.</summary>
    public void EndSpread()
    {
        NotesSpread = false;
    }

    /// <summary>Looks whether a second is over; at least ten times a second.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        if (now - _second >= Time.Second)
        {
            ASecond = (int)(Count * Time.Second / (now - _second));
            _second = now;
            Count = 0;
        }
    }

    /// <summary>Notes a gap between two buckets.</summary>
    /// <param name="gap">Time without a bucket in microseconds.</param>
    public void NoteGap(long gap)
    {
        if (gap > WorstGapMicroseconds)
        {
            WorstGapMicroseconds = gap > int.MaxValue ? int.MaxValue : (int)gap;
        }
    }

    /// <summary>Notes the spread of a bucket's readings.</summary>
    /// <param name="bucket">The bucket.</param>
    public void NoteSpread(Bucket bucket)
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
