using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Takes the readings of a bucket, and some of the next one before the bucket is closed: closing takes its time, and the hole in
/// the readings must not sit at the same place of every mains cycle, where it could hide a rectifier's narrow pulse for good.
/// </summary>
public sealed class BurstReader
{
    /// <summary>Readings that fit; more than a bucket holds at the fastest conversion (40 µs): if they fill up, the clock stands still.</summary>
    public const int Most = 64;

    // The hole begins up to 1.2 ms after a bucket's end, at one of 17 places. 7 places further each time is 11 further in the next
    // half cycle of 50 Hz, which is four buckets: far enough for the other half of a pulse to be seen.
    private const int Places = 17;
    private const int Stride = 7;
    private const int PlaceMicroseconds = 75;

    private readonly IBoard _board;
    private int[] _next = new int[Most];
    private int _ahead;
    private int _place;

    /// <summary>The readings of the bucket.</summary>
    public int[] Readings = new int[Most];

    /// <summary>Number of them.</summary>
    public int Count;

    /// <summary>Initializes a new instance of the <see cref="BurstReader"/> class.</summary>
    /// <param name="board">The board.</param>
    public BurstReader(IBoard board)
    {
        _board = board;
    }

    /// <summary>Takes readings until the bucket's end.</summary>
    /// <param name="end">The end, in microseconds.</param>
    public void Read(long end)
    {
        int[] readings = _next;
        _next = Readings;
        Readings = readings;
        Count = Burst(readings, _ahead, end);
        _ahead = 0;
    }

    /// <summary>Takes the first readings of the next bucket, for up to 1.2 ms.</summary>
    /// <param name="end">End of the bucket that was read, in microseconds.</param>
    public void ReadAhead(long end)
    {
        _place += Stride;
        if (_place >= Places)
        {
            _place -= Places;
        }

        _ahead = Burst(_next, 0, end + (_place * PlaceMicroseconds));
    }

    private int Burst(int[] readings, int from, long until)
    {
        int count;
        try
        {
            count = _board.ReadBurst(readings, from, until);
        }
        catch (Exception)
        {
            // A converter that throws is a read that failed; the fault monitor knows when it is one too many.
            count = from < Most ? from : Most - 1;
            readings[count] = -1;
            return count + 1;
        }

        return count < from || count > Most ? from : count;
    }
}
