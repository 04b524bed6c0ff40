using System;

namespace NanoDustSwitch.Firmware;

/// <summary>Some buckets' readings as they came, with the times between which they were taken.</summary>
/// <remarks>
/// A run is a row of readings without a hole. A bucket has two: what was read before the last bucket was closed, and the rest.
/// </remarks>
public sealed class ReadingTape
{
    /// <summary>Most readings.</summary>
    public const int Most = 512;

    /// <summary>Most runs; 16 buckets, two cycles of 50 Hz.</summary>
    public const int MostRuns = 32;

    /// <summary>The readings in counts; a negative one is a failed read.</summary>
    public readonly int[] Readings = new int[Most];

    /// <summary>Number of readings in each run.</summary>
    public readonly int[] Counts = new int[MostRuns];

    /// <summary>Beginning of each run, in microseconds since <see cref="Begin"/>.</summary>
    public readonly int[] Begins = new int[MostRuns];

    /// <summary>Length of each run in microseconds.</summary>
    public readonly int[] Lengths = new int[MostRuns];

    /// <summary>Number of readings.</summary>
    public int Count;

    /// <summary>Number of runs.</summary>
    public int Runs;

    /// <summary>Time from which the runs count, in microseconds.</summary>
    public long Begin;

    /// <summary>Whether no other bucket fits.</summary>
    public bool IsFull;

    private bool _hasBegun;
    private int _ahead;
    private long _aheadBegin;
    private long _aheadEnd;
    private long _resumedAt;

    /// <summary>Makes it empty; the first bucket to be taken is the one after the next.</summary>
    public void Reset()
    {
        Count = 0;
        Runs = 0;
        IsFull = false;
        _hasBegun = false;
    }

    /// <summary>The readings of a bucket go on after the hole.</summary>
    /// <param name="ahead">Readings that were taken before it.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Resume(int ahead, long now)
    {
        _ahead = ahead;
        _resumedAt = now;
    }

    /// <summary>Takes the readings of a bucket that is whole.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="count">How many.</param>
    /// <param name="end">Time at which the last was taken, in microseconds.</param>
    /// <param name="aheadEnd">Time at which those of the next bucket that came before the hole were taken, in microseconds.</param>
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
