using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Reads bucket after bucket. They end on a fixed grid, so that they are alike whatever the steps between them cost.</summary>
/// <remarks>
/// Some readings of the next bucket are taken before one is closed: closing takes its time, and the hole in the readings must not
/// sit at the same place of every mains cycle, where it could hide a rectifier's narrow pulse for good.
/// </remarks>
public sealed class BucketReader
{
    // More than a bucket holds at the fastest conversion (40 µs): if so many come, the clock stands still.
    private const int Most = 64;

    // The hole begins up to 1.2 ms after a bucket's end, at one of 17 places. 7 places further each time is 11 further in the next
    // half cycle of 50 Hz, which is four buckets: far enough for the other half of a pulse to be seen.
    private const int Places = 17;
    private const int Stride = 7;
    private const int PlaceMicroseconds = 75;

    private readonly IBoard _board;
    private readonly BucketFiller _filler;
    private readonly ReadingStatistics _statistics;
    private int[] _readings = new int[Most];
    private int[] _next = new int[Most];
    private int _ahead;
    private int _place;
    private long _nextEnd;

    /// <summary>The last bucket.</summary>
    public readonly Bucket Bucket = new Bucket();

    /// <summary>Whether a sensor is fitted to the vacuum's own line.</summary>
    public bool ReadsVacuumLine;

    /// <summary>Takes the readings themselves, beside the buckets; null when nobody wants them.</summary>
    public ReadingTape Tape;

    /// <summary>Time at which its readings were taken, in microseconds; later than its end after a stall.</summary>
    public long Now;

    /// <summary>Looks at the clock that showed no later time, when it stands.</summary>
    public int LooksAtOneTime;

    /// <summary>Initializes a new instance of the <see cref="BucketReader"/> class.</summary>
    /// <param name="board">The board.</param>
    /// <param name="statistics">Where readings and gaps are counted.</param>
    public BucketReader(IBoard board, ReadingStatistics statistics)
    {
        _board = board;
        _statistics = statistics;
        _filler = new BucketFiller(board.FullScale);
        Now = board.Now;
        _nextEnd = GridAfter(Now);
    }

    /// <summary>Reads the next bucket.</summary>
    /// <returns>What came of it.</returns>
    public BucketRead Read()
    {
        int[] readings = _next;
        int[] next = _readings;
        _next = next;
        _readings = readings;
        IBoard board = _board;
        long end = _nextEnd;
        int count;
        if (Tape != null)
        {
            Tape.Resume(_ahead, board.Now);
        }

        try
        {
            count = board.ReadBurst(readings, _ahead, end);
        }
        catch (Exception)
        {
            count = Failed(readings, _ahead);
        }

        if (count < _ahead || count > Most)
        {
            count = _ahead;
        }

        _ahead = 0;
        long now = board.Now;
        if (now < end)
        {
            return EndEarly(readings, count, now);
        }

        Now = now;
        if (now < end + Bucket.Microseconds)
        {
            _nextEnd = end + Bucket.Microseconds;
            int place = _place + Stride;
            _place = place >= Places ? place - Places : place;
            try
            {
                _ahead = board.ReadBurst(next, 0, end + (_place * PlaceMicroseconds));
            }
            catch (Exception)
            {
                _ahead = Failed(next, 0);
            }

            if (_ahead < 0 || _ahead > Most)
            {
                _ahead = 0;
            }
        }
        else
        {
            // The board was busy elsewhere; the core sees the gap in the next bucket's time.
            _nextEnd = GridAfter(now);
            _statistics.NoteGap(_nextEnd - end - Bucket.Microseconds);
        }

        _statistics.Count += count;
        if (Tape != null)
        {
            Tape.Add(readings, count, now, board.Now);
        }

        if (ReadsVacuumLine)
        {
            Bucket.VacuumReading = ReadVacuumLine();
        }

        _filler.Fill(readings, count, end, Bucket);
        return BucketRead.Done;
    }

    // A converter that throws is a read that failed; the fault monitor knows when it is one too many.
    private static int Failed(int[] readings, int from)
    {
        int count = from < Most ? from : Most - 1;
        readings[count] = -1;
        return count + 1;
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
    private BucketRead EndEarly(int[] readings, int count, long now)
    {
        if (now > Now && now > Bucket.EndTime)
        {
            Now = now;
            LooksAtOneTime = 0;
            _filler.Fill(readings, count, now, Bucket);
            return BucketRead.Done;
        }

        // A read that failed at once is no bucket; so many looks at one time, or a clock that runs back, is a fault.
        LooksAtOneTime += count > 0 ? count : 1;
        return LooksAtOneTime >= Most || now < Now ? BucketRead.ClockStands : BucketRead.Nothing;
    }
}
