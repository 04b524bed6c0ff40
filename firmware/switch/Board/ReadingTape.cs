using System;

namespace NanoDustSwitch.Firmware;

/// <summary>Holds the single readings of up to 16 buckets, with the times at which they were taken.</summary>
/// <remarks>
/// A run is a row of readings without a hole between them. A bucket has two runs: the readings taken before the previous bucket
/// was closed (see <see cref="BucketReader"/>), and those taken afterwards.
/// </remarks>
public sealed class ReadingTape
{
    /// <summary>Most readings that it can hold.</summary>
    public const int Most = 512;

    /// <summary>Most runs that it can hold: those of 16 buckets, which are two cycles of 50 Hz.</summary>
    public const int MostRuns = 32;

    /// <summary>The readings in counts; a negative one is a failed read.</summary>
    public readonly int[] Readings = new int[Most];

    /// <summary>Number of readings in each run.</summary>
    public readonly int[] Counts = new int[MostRuns];

    /// <summary>When each run begins, in microseconds after <see cref="Begin"/>.</summary>
    public readonly int[] Begins = new int[MostRuns];

    /// <summary>Length of each run in microseconds.</summary>
    public readonly int[] Lengths = new int[MostRuns];

    /// <summary>Number of readings.</summary>
    public int Count;

    /// <summary>Number of runs.</summary>
    public int Runs;

    /// <summary>Time from which the beginnings of the runs are counted, in microseconds.</summary>
    public long Begin;

    /// <summary>Whether no further bucket fits.</summary>
    public bool IsFull;

    private bool _hasBegun;
    private int _ahead;
    private long _aheadBegin;
    private long _aheadEnd;
    private long _resumedAt;

    /// <summary>
    /// Empties the tape. The bucket that is under way is not taken, because nobody noted when its readings began; the first one
    /// to be taken is the one after it.
    /// </summary>
    public void Reset()
    {
        Count = 0;
        Runs = 0;
        IsFull = false;
        _hasBegun = false;
    }

    /// <summary>Notes that the readings of a bucket go on after the hole in which the previous bucket was closed.</summary>
    /// <param name="ahead">Number of readings that were taken before the hole.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Resume(int ahead, long now)
    {
        _ahead = ahead;
        _resumedAt = now;
    }

    /// <summary>Takes the readings of a complete bucket, unless the tape is full.</summary>
    /// <param name="readings">The readings in counts.</param>
    /// <param name="count">How many there are.</param>
    /// <param name="end">Time at which the last one was taken, in microseconds.</param>
    /// <param name="aheadEnd">Time at which the hole after it begins, in microseconds. Up to then readings of the next bucket
    /// were taken.</param>
    public void Add(int[] readings, int count, long end, long aheadEnd)
    {
        if (!_hasBegun)
        {
            _hasBegun = true;
            Begin = end;
        }
        else if (!IsFull)
        {
            IsFull = count > Most - Count || Runs + 2 > MostRuns;
            if (!IsFull)
            {
                Array.Copy(readings, 0, Readings, Count, count);
                Count += count;
                AddRun(_ahead, _aheadBegin, _aheadEnd);
                AddRun(count - _ahead, _resumedAt, end);
            }
        }

        _aheadBegin = end;
        _aheadEnd = aheadEnd;
    }

    private void AddRun(int count, long begin, long end)
    {
        if (count > 0)
        {
            Counts[Runs] = count;
            Begins[Runs] = (int)(begin - Begin);
            Lengths[Runs] = (int)(end - begin);
            Runs++;
        }
    }
}
