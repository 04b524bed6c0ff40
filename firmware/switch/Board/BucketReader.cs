using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Reads bucket after bucket. They end on a fixed grid, so that they are alike whatever the steps between them cost.</summary>
public sealed class BucketReader
{
    private readonly IBoard _board;
    private readonly BurstReader _burst;
    private readonly BucketFiller _filler;
    private long _nextEnd;
    private int _looksAtOneTime;

    /// <summary>The last bucket.</summary>
    public readonly Bucket Bucket = new Bucket();

    /// <summary>Whether a sensor is fitted to the vacuum's own line.</summary>
    public bool ReadsVacuumLine;

    /// <summary>Time at which its readings were taken, in microseconds; later than its end after a stall.</summary>
    public long Now;

    /// <summary>Gets the looks at the clock that showed no later time, when it stands.</summary>
    public int LooksAtOneTime
    {
        get { return _looksAtOneTime; }
    }

    /// <summary>Initializes a new instance of the <see cref="BucketReader"/> class.</summary>
    /// <param name="board">The board.</param>
    public BucketReader(IBoard board)
    {
        _board = board;
        _burst = new BurstReader(board);
        _filler = new BucketFiller(board.FullScale);
        Now = board.Now;
        _nextEnd = GridAfter(Now);
    }

    /// <summary>Reads the next bucket.</summary>
    /// <returns>What came of it.</returns>
    public BucketRead Read()
    {
        long end = _nextEnd;
        _burst.Read(end);
        long now = _board.Now;
        if (now < end)
        {
            return EndEarly(now);
        }

        Now = now;
        if (now < end + Bucket.Microseconds)
        {
            _nextEnd = end + Bucket.Microseconds;
            _burst.ReadAhead(end);
        }
        else
        {
            // The board was busy elsewhere; the core sees the gap in the next bucket's time.
            _nextEnd = GridAfter(now);
        }

        if (ReadsVacuumLine)
        {
            Bucket.VacuumReading = ReadVacuumLine();
        }

        _filler.Fill(_burst.Readings, _burst.Count, end, Bucket);
        return BucketRead.Done;
    }

    private static long GridAfter(long time)
    {
        return ((time / Bucket.Microseconds) + 1) * Bucket.Microseconds;
    }

    private int ReadVacuumLine()
    {
        try
        {
            return _board.ReadVacuumLine();
        }
        catch (Exception)
        {
            // The tool's line shows whether the converter works; without this one nothing is known about the vacuum's current.
            return -1;
        }
    }

    // A burst ends early when it throws, or when its array is full.
    private BucketRead EndEarly(long now)
    {
        if (now > Now && now > Bucket.EndTime)
        {
            Now = now;
            _looksAtOneTime = 0;
            _filler.Fill(_burst.Readings, _burst.Count, now, Bucket);
            return BucketRead.Done;
        }

        // A read that failed at once is no bucket; so many looks at one time, or a clock that runs back, is a fault.
        _looksAtOneTime += _burst.Count > 0 ? _burst.Count : 1;
        return _looksAtOneTime >= BurstReader.Most || now < Now ? BucketRead.ClockStands : BucketRead.Nothing;
    }
}
