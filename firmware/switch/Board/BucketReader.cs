using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Reads one bucket after the other. Buckets end at multiples of 2.5 ms of the board's time, or of 5 ms where the board is slow,
/// so they are equally long however long the steps between them take.
/// </summary>
/// <remarks>
/// Closing a bucket takes time in which nothing is read. If this hole came at the same place of every mains cycle, it could hide
/// the narrow current pulse of a rectifier for good. So when a bucket ends, the reader first takes some readings of the next one,
/// for a different length of time each time, and only then closes the bucket. That moves the hole about.
/// </remarks>
public sealed class BucketReader
{
    // At the fastest conversion, 40 µs, 62 readings fit into a bucket. If more come, the clock stands still.
    private const int Most = 64;

    // The hole begins 0 to 1.2 ms after a bucket's end, at one of 17 places, and moves on by 7 places with each bucket. A half
    // cycle of 50 Hz is four buckets, so from one half cycle to the next the hole moves by 28, which is 11 modulo 17. That is far
    // enough for the part of a pulse that it has hidden to be seen the next time.
    private const int Places = 17;
    private const int Stride = 7;
    private const int PlaceMicroseconds = 75;

    // A look at the clock costs the board a fifth of a reading. As many readings as the last bucket had, less this, will surely
    // fit into this one too, and only after them it looks. A board that has become slower fits fewer in by as many with each
    // bucket.
    private const int Unsure = 4;

    private readonly IBoard _board;
    private readonly BucketFiller _filler;
    private readonly ReadingStatistics _statistics;
    private int[] _readings = new int[Most];
    private int[] _next = new int[Most];
    private int _ahead;
    private int _sure;
    private int _place;
    private long _nextEnd;
    private long _length = Bucket.Microseconds;

    /// <summary>The last bucket.</summary>
    public readonly Bucket Bucket = new Bucket();

    /// <summary>Whether a sensor is fitted to the vacuum's own line.</summary>
    public bool ReadsVacuumLine;

    /// <summary>Whether a bucket is closed at its end at once, to spare a very slow board a burst. The hole then stays where it
    /// is.</summary>
    public bool ClosesAtOnce;

    /// <summary>Gets a copy of each single reading; null while nobody wants the readings themselves.</summary>
    public ReadingTape Tape;

    /// <summary>
    /// Time in microseconds at which the last bucket's readings were complete. After a stall it is later than the bucket's end.
    /// </summary>
    public long Now;

    /// <summary>How many times in a row the clock has been found at the same time, while it stands still.</summary>
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

    /// <summary>From the next bucket on they are long ones, for a board that is too slow for others.</summary>
    public void UseLongBuckets()
    {
        _length = Bucket.LongMicroseconds;
        _nextEnd = GridAfter(_nextEnd);
    }

    /// <summary>Reads the next bucket.</summary>
    /// <returns>Whether there is a new bucket, and if not, why.</returns>
    public BucketRead Read()
    {
        int[] readings = _next;
        _next = _readings;
        _readings = readings;
        IBoard board = _board;
        long end = _nextEnd;
        int ahead = _ahead;
        int count;
        if (Tape != null)
        {
            Tape.Resume(ahead, board.Now);
        }

        try
        {
            count = board.ReadBurst(readings, ahead, _sure, end);
        }
        catch (Exception)
        {
            count = Failed(readings, ahead);
        }

        if (count < ahead || count > Most)
        {
            count = ahead;
        }

        _sure = count - Unsure;
        long now = board.Now;
        if (now < end)
        {
            _ahead = 0;
            return EndEarly(readings, count, now);
        }

        Now = now;
        long next = end + _length;
        if (now < next)
        {
            _nextEnd = next;
            if (ClosesAtOnce)
            {
                _ahead = 0;
            }
            else
            {
                int place = (_place + Stride) % Places;
                _place = place;
                try
                {
                    ahead = board.ReadBurst(_next, 0, 0, end + (place * PlaceMicroseconds));
                }
                catch (Exception)
                {
                    ahead = Failed(_next, 0);
                }

                _ahead = (uint)ahead > Most ? 0 : ahead;
            }
        }
        else
        {
            // The board was busy with something else for more than a bucket. The next bucket's end tells the core of the gap.
            _ahead = 0;
            _sure = 0;
            _nextEnd = GridAfter(now);
            _statistics.NoteGap(_nextEnd - next);
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

    // When the converter throws, that counts as one failed read. The fault monitor decides how many of them are a fault.
    private static int Failed(int[] readings, int from)
    {
        int count = from < Most ? from : Most - 1;
        readings[count] = -1;
        return count + 1;
    }

    private long GridAfter(long time)
    {
        return ((time / _length) + 1) * _length;
    }

    private int ReadVacuumLine()
    {
        try
        {
            return _board.ReadVacuumLine();
        }
        catch (Exception)
        {
            // -1 says that the vacuum's current is not known. That is no fault: the tool's line shows whether the converter
            // works.
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

        // A read that failed at once makes no bucket, and may go well the next time. But when the clock shows the same time again
        // and again, or runs backwards, it is a fault.
        LooksAtOneTime += count > 0 ? count : 1;
        return LooksAtOneTime >= Most || now < Now ? BucketRead.ClockStands : BucketRead.Nothing;
    }
}
