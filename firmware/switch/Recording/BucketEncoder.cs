using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Writes each bucket as a few printable characters, straight into the text that waits to be sent.</summary>
/// <remarks>
/// A character carries six bits: its code is 48 plus their value ('0' to 'o'). A number is a row of characters with five bits
/// each, the lowest bits first; the sixth bit says that another character follows. Signed numbers are mapped to positive ones:
/// 0, -1, 1, -2 become 0, 1, 2, 3. A line holds eight items, which are buckets, events and readings; its last character is a
/// check of those before it. firmware/recording.md describes the format.
/// </remarks>
public sealed class BucketEncoder
{
    /// <summary>
    /// Bit in a bucket's first character: the bucket does not end 2.5 ms after the one before. The distance in µs follows.
    /// </summary>
    public const int OtherTime = 1;

    /// <summary>
    /// Bit in a bucket's first character: the numbers of readings at the low rail, at the high rail and of failed reads follow.
    /// </summary>
    public const int HasRails = 2;

    /// <summary>
    /// By how many bits the change of the number of readings is shifted in a bucket's first character, where it takes three bits.
    /// </summary>
    public const int CountShift = 2;

    /// <summary>
    /// In place of the change of the number of readings: it is more than three up or down, so it follows as a number of its own.
    /// </summary>
    public const int OtherCount = 7;

    /// <summary>An item whose first character is this or more is no bucket but an event; the event's kind is added.</summary>
    public const int Event = 32;

    /// <summary>Code of the character for the value 0.</summary>
    public const int First = 48;

    private const int ItemsALine = 8;
    private const int LongestItem = 48;

    private readonly TextOutput _output;
    private int _items;
    private int _check;
    private int _lastReading;
    private long _lastEnd;
    private int _lastCount;
    private int _reference;
    private int _lastVacuum;
    private int _bucketMicroseconds;

    /// <summary>Time in microseconds from which the end of the first bucket is counted.</summary>
    public long Begin;

    /// <summary>Whether each bucket's reading of the vacuum's own line is written too.</summary>
    public bool HasVacuumLine;

    /// <summary>Whether the serial line was too slow, so that buckets were lost.</summary>
    public bool HasOverrun;

    /// <summary>Initializes a new instance of the <see cref="BucketEncoder"/> class.</summary>
    /// <param name="output">The text that waits to be sent.</param>
    public BucketEncoder(TextOutput output)
    {
        _output = output;
    }

    /// <summary>
    /// Gets a value indicating whether the last line is complete, so that a line of another kind may be written.
    /// </summary>
    public bool IsAtLineStart
    {
        get { return _items == 0; }
    }

    /// <summary>Begins a new recording.</summary>
    /// <param name="begin">End of the bucket before the first one, in microseconds.</param>
    /// <param name="bucketMicroseconds">Usual length of a bucket.</param>
    public void Reset(long begin, int bucketMicroseconds)
    {
        Begin = begin;
        _bucketMicroseconds = bucketMicroseconds;
        _lastEnd = begin;
        _lastCount = 0;
        _reference = 0;
        _lastVacuum = 0;
        _items = 0;
        _check = 0;
        HasOverrun = false;
    }

    /// <summary>Ends the line that is under way, if there is one, with its check.</summary>
    public void EndLine()
    {
        if (_items > 0)
        {
            _items = 0;
            Put(_check & 63);
            _check = 0;
            _output.End();
        }
    }

    /// <summary>Adds a bucket.</summary>
    /// <param name="bucket">The bucket.</param>
    public void Add(Bucket bucket)
    {
        if (!BeginItem())
        {
            return;
        }

        long distance = bucket.EndTime - _lastEnd;
        int change = bucket.Count - _lastCount;
        bool isOtherTime = distance != _bucketMicroseconds;
        bool hasRails = bucket.AtLowRail + bucket.AtHighRail + bucket.Failed != 0;
        bool isOtherCount = change < -3 || change > 3;
        Put((isOtherTime ? OtherTime : 0) | (hasRails ? HasRails : 0) | ((isOtherCount ? OtherCount : change + 3) << CountShift));
        if (isOtherTime)
        {
            Signed(distance);
        }

        if (isOtherCount)
        {
            Signed(change);
        }

        _lastEnd = bucket.EndTime;
        _lastCount = bucket.Count;
        if (hasRails)
        {
            Number(bucket.AtLowRail);
            Number(bucket.AtHighRail);
            Number(bucket.Failed);
        }

        if (bucket.Count > 0)
        {
            // Sums are written relative to the first bucket's mean. An alternating current swings about it, so the numbers stay
            // small.
            Signed(bucket.Sum - ((long)_reference * bucket.Count));
            int mean = bucket.Sum / bucket.Count;
            if (_reference == 0)
            {
                _reference = mean;
            }

            Number(mean - bucket.Least);
            Number(bucket.Greatest - mean);
        }

        if (HasVacuumLine)
        {
            Signed(bucket.VacuumReading - _lastVacuum);
            _lastVacuum = bucket.VacuumReading;
        }

        EndItem();
    }

    /// <summary>Adds an event.</summary>
    /// <param name="kind">Kind of the event.</param>
    /// <param name="figure">Its figure; <see cref="RecordedEvent"/> tells the meaning.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Add(RecordedEvent kind, int figure, long now)
    {
        if (BeginItem())
        {
            Put(Event + (int)kind);
            Signed(figure);
            Signed(now - _lastEnd);
            EndItem();
        }
    }

    /// <summary>Announces a burst of single readings.</summary>
    /// <param name="runs">Number of runs, which are rows of readings without a hole between them.</param>
    /// <param name="begin">Time in microseconds from which the beginnings of the runs are counted.</param>
    public void AddBurst(int runs, long begin)
    {
        _lastReading = 0;
        Add(RecordedEvent.Burst, runs, begin);
    }

    /// <summary>Adds the head of a run. Its readings follow.</summary>
    /// <param name="count">Number of readings in the run.</param>
    /// <param name="begin">When it begins, in microseconds after the beginning of the burst.</param>
    /// <param name="length">How long it takes, in microseconds.</param>
    public void AddRun(int count, int begin, int length)
    {
        if (BeginItem())
        {
            Put(Event + (int)RecordedEvent.Run);
            Number(count);
            Number(begin);
            Number(length);
            EndItem();
        }
    }

    /// <summary>Adds some readings of a run.</summary>
    /// <param name="readings">The readings in counts.</param>
    /// <param name="from">Index of the first one.</param>
    /// <param name="count">How many, at most eight.</param>
    public void AddReadings(int[] readings, int from, int count)
    {
        if (BeginItem())
        {
            Put(Event + (int)RecordedEvent.Readings);
            Number(count);
            for (int i = from; i < from + count; i++)
            {
                int reading = readings[i];
                Signed(reading - _lastReading);
                _lastReading = reading;
            }

            EndItem();
        }
    }

    private bool BeginItem()
    {
        HasOverrun = HasOverrun || _output.Room < LongestItem;
        return !HasOverrun;
    }

    private void EndItem()
    {
        if (++_items == ItemsALine)
        {
            EndLine();
        }
    }

    private void Signed(long value)
    {
        Number(value < 0 ? (-(value + 1) << 1) | 1 : value << 1);
    }

    private void Number(long value)
    {
        while (value >= 32)
        {
            Put(32 | (int)(value & 31));
            value >>= 5;
        }

        Put((int)value);
    }

    private void Put(int six)
    {
        // The check is multiplied by three for each character, so that it depends on their order as well.
        _check = (_check << 1) + _check + six;
        _output.Byte((byte)(First + six));
    }
}
