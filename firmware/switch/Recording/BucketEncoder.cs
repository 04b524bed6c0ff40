using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Writes buckets as a few printable characters each, straight into what waits to be sent.</summary>
/// <remarks>
/// A character carries six bits: the code is 48 plus their value ('0' to 'o'). Numbers are rows of characters with five bits
/// each, least first; the sixth says that more follow. Signed numbers are folded: 0, -1, 1, -2 become 0, 1, 2, 3. The last character
/// of a line is a check of those before it.
/// </remarks>
public sealed class BucketEncoder
{
    /// <summary>First character of a bucket: its end is not 2.5 ms after the last one; the distance in µs follows.</summary>
    public const int OtherTime = 1;

    /// <summary>First character of a bucket: readings at a rail and failed reads follow.</summary>
    public const int HasRails = 2;

    /// <summary>First character of a bucket: where the change of the count begins, three bits.</summary>
    public const int CountShift = 2;

    /// <summary>Change of the count that stands for: more than three, the change follows.</summary>
    public const int OtherCount = 7;

    /// <summary>First character of an event instead of a bucket; its number is added.</summary>
    public const int Event = 32;

    /// <summary>Code of the character for nought.</summary>
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

    /// <summary>Time from which the first bucket's end counts, in microseconds.</summary>
    public long Begin;

    /// <summary>Whether the reading of the vacuum's own line is written too.</summary>
    public bool HasVacuumLine;

    /// <summary>Whether the line was too slow and buckets were lost.</summary>
    public bool HasOverrun;

    /// <summary>Initializes a new instance of the <see cref="BucketEncoder"/> class.</summary>
    /// <param name="output">Where to write.</param>
    public BucketEncoder(TextOutput output)
    {
        _output = output;
    }

    /// <summary>Gets a value indicating whether the last line is whole, so that something else may be written.</summary>
    public bool IsAtLineStart
    {
        get { return _items == 0; }
    }

    /// <summary>Begins anew.</summary>
    /// <param name="begin">End of the last bucket before the first, in microseconds.</param>
    public void Reset(long begin)
    {
        Begin = begin;
        _lastEnd = begin;
        _lastCount = 0;
        _reference = 0;
        _lastVacuum = 0;
        _items = 0;
        _check = 0;
        HasOverrun = false;
    }

    /// <summary>Ends a line that is not full, if there is one.</summary>
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
        bool isOtherTime = distance != Bucket.Microseconds;
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
            // The first bucket's mean is the reference for all: an alternating current swings about it.
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
    /// <param name="figure">Its figure.</param>
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

    /// <summary>Announces readings as they came.</summary>
    /// <param name="runs">Number of runs, each without a hole.</param>
    /// <param name="begin">Time from which the runs count, in microseconds.</param>
    public void AddBurst(int runs, long begin)
    {
        _lastReading = 0;
        Add(RecordedEvent.Burst, runs, begin);
    }

    /// <summary>Adds the head of a run, whose readings follow.</summary>
    /// <param name="count">Number of readings.</param>
    /// <param name="begin">When it begins, in microseconds.</param>
    /// <param name="length">How long it is, in microseconds.</param>
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
    /// <param name="from">Place of the first.</param>
    /// <param name="count">How many; eight fit into an item.</param>
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
        // Times three, so that the place of a character counts too.
        _check = (_check << 1) + _check + six;
        _output.Byte((byte)(First + six));
    }
}
