using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>Reads back what <see cref="BucketEncoder"/> has written.</summary>
/// <param name="begin">End of the last bucket before the first, in microseconds.</param>
/// <param name="bucketMicroseconds">Usual length of a bucket.</param>
/// <param name="hasVacuumLine">Whether each bucket has a reading of the vacuum's own line.</param>
internal sealed class BucketDecoder(long begin, int bucketMicroseconds, bool hasVacuumLine)
{
    private string _line = "";
    private int _at;
    private long _lastEnd = begin;
    private int _lastCount;
    private int _reference;
    private int _lastVacuum;
    private int _lastReading;

    /// <summary>Gets a value indicating whether the line holds another item.</summary>
    public bool HasMore => _at < _line.Length;

    /// <summary>Gets a value indicating whether the next item is an event and not a bucket.</summary>
    public bool IsEvent => _line[_at] - BucketEncoder.First >= BucketEncoder.Event;

    /// <summary>Gets a value indicating whether the next item belongs to readings as they came, which change nothing.</summary>
    public bool IsBurst => _line[_at] - BucketEncoder.First >= BucketEncoder.Event + (int)RecordedEvent.Burst;

    /// <summary>Tells whether the last character of a line is the check of those before it.</summary>
    /// <param name="line">The line.</param>
    /// <returns>False when a character was lost or changed, but for one time in 64.</returns>
    public static bool IsWhole(string line)
    {
        if (line.Length < 2)
        {
            return false;
        }

        int check = line[..^1].Aggregate(0, (sum, c) => (sum * 3) + c - BucketEncoder.First);
        return ((check ^ (line[^1] - BucketEncoder.First)) & 63) == 0;
    }

    /// <summary>Tells whether a line may hold items.</summary>
    /// <param name="line">The line.</param>
    /// <returns>True when all its characters carry six bits.</returns>
    public static bool IsData(string line) => line.All(c => c - BucketEncoder.First is >= 0 and < 64);

    /// <summary>Takes the next line.</summary>
    /// <param name="line">The line.</param>
    public void Take(string line)
    {
        _line = line;
        _at = 0;
    }

    /// <summary>Reads an event.</summary>
    /// <returns>Kind, figure and time in microseconds.</returns>
    public (RecordedEvent Kind, int Figure, long Time) ReadEvent()
    {
        RecordedEvent kind = (RecordedEvent)(Six() - BucketEncoder.Event);
        int figure = (int)Signed();
        return (kind, figure, _lastEnd + Signed());
    }

    /// <summary>Reads an item of readings as they came.</summary>
    /// <param name="bursts">Where it goes.</param>
    public void ReadBurst(List<Burst> bursts)
    {
        RecordedEvent kind = (RecordedEvent)(Six() - BucketEncoder.Event);
        if (kind == RecordedEvent.Burst)
        {
            _lastReading = 0;
            _ = Number();
            bursts.Add(new Burst(_lastEnd + Signed()));
        }
        else if (bursts.Count == 0)
        {
            throw new UserException("The recording is damaged: readings come before their burst.");
        }
        else if (kind == RecordedEvent.Run)
        {
            bursts[^1].AddRun((int)Number(), Number(), Number());
        }
        else
        {
            for (long count = Number(); count > 0 && HasMore; count--)
            {
                _lastReading += (int)Signed();
                bursts[^1].AddReading(_lastReading);
            }
        }
    }

    /// <summary>Reads a bucket.</summary>
    /// <param name="bucket">Where it goes.</param>
    public void ReadBucket(Bucket bucket)
    {
        int first = Six();
        bucket.EndTime = _lastEnd + ((first & BucketEncoder.OtherTime) != 0 ? Signed() : bucketMicroseconds);
        int change = first >> BucketEncoder.CountShift;
        bucket.Count = _lastCount + (change == BucketEncoder.OtherCount ? (int)Signed() : change - 3);
        bool hasRails = (first & BucketEncoder.HasRails) != 0;
        bucket.AtLowRail = hasRails ? (int)Number() : 0;
        bucket.AtHighRail = hasRails ? (int)Number() : 0;
        bucket.Failed = hasRails ? (int)Number() : 0;
        bucket.Sum = 0;
        bucket.Least = int.MaxValue;
        bucket.Greatest = int.MinValue;
        if (bucket.Count > 0)
        {
            bucket.Sum = (int)(Signed() + ((long)_reference * bucket.Count));
            int mean = bucket.Sum / bucket.Count;
            _reference = _reference == 0 ? mean : _reference;
            bucket.Least = mean - (int)Number();
            bucket.Greatest = mean + (int)Number();
        }

        if (hasVacuumLine)
        {
            _lastVacuum += (int)Signed();
            bucket.VacuumReading = _lastVacuum;
        }

        _lastEnd = bucket.EndTime;
        _lastCount = bucket.Count;
    }

    private long Signed()
    {
        long folded = Number();
        return (folded & 1) != 0 ? -(folded >> 1) - 1 : folded >> 1;
    }

    private long Number()
    {
        long value = 0;
        int shift = 0;
        while (true)
        {
            int six = Six();
            value |= (long)(six & 31) << shift;
            if (six < 32)
            {
                return value;
            }

            shift += 5;
        }
    }

    private int Six() => _at < _line.Length ? _line[_at++] - BucketEncoder.First : 0;
}
