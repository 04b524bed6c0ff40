using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>How fast the readings come and how large the gaps between buckets are.</summary>
public sealed class ReadingStatistics
{
    private long _second;
    private int _moved;
    private int _lastLeast = -1;

    /// <summary>Number of readings so far in the current second.</summary>
    public int Count;

    /// <summary>Whether to call <see cref="NoteSpread"/> for every bucket.</summary>
    public bool NotesSpread;

    /// <summary>Readings a second, over the last whole second.</summary>
    public int ASecond;

    /// <summary>Longest gap between two buckets since the board came up, in microseconds.</summary>
    public int WorstGapMicroseconds;

    /// <summary>Longest gap since <see cref="StartSpread"/>, in microseconds.</summary>
    public int SpreadGapMicroseconds;

    /// <summary>Least reading since <see cref="StartSpread"/>, in counts.</summary>
    public int Least;

    /// <summary>Greatest reading since <see cref="StartSpread"/>, in counts.</summary>
    public int Greatest;

    /// <summary>
    /// Gets how many of the converter's bits have been both 0 and 1 since <see cref="StartSpread"/>. A bit that is stuck is not
    /// among them.
    /// </summary>
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

    /// <summary>Begins to note the spread of the readings: the least, the greatest, and which bits change.</summary>
    public void StartSpread()
    {
        Least = int.MaxValue;
        Greatest = int.MinValue;
        SpreadGapMicroseconds = 0;
        _moved = 0;
        _lastLeast = -1;
        NotesSpread = true;
    }

    /// <summary>Ends what <see cref="StartSpread"/> began; the results stay.</summary>
    public void EndSpread()
    {
        NotesSpread = false;
    }

    /// <summary>
    /// Works out the rate when a second is over. Must be called at least ten times a second, so that the second is not much too
    /// long.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>True when a second is over and <see cref="ASecond"/> is new.</returns>
    public bool Update(long now)
    {
        if (now - _second < Time.Second)
        {
            return false;
        }

        ASecond = (int)(Count * Time.Second / (now - _second));
        _second = now;
        Count = 0;
        return true;
    }

    /// <summary>Notes a gap between two buckets.</summary>
    /// <param name="gap">Length of the gap in microseconds.</param>
    public void NoteGap(long gap)
    {
        int length = gap > int.MaxValue ? int.MaxValue : (int)gap;
        WorstGapMicroseconds = length > WorstGapMicroseconds ? length : WorstGapMicroseconds;
        SpreadGapMicroseconds = length > SpreadGapMicroseconds ? length : SpreadGapMicroseconds;
    }

    /// <summary>Notes the spread of a bucket's readings.</summary>
    /// <param name="bucket">The bucket.</param>
    public void NoteSpread(Bucket bucket)
    {
        if (bucket.Count == 0)
        {
            return;
        }

        // Least and greatest are single readings, not means, so a bit that differs between them is one of the converter's.
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
