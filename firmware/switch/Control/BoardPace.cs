using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Sees whether the board is fast enough for ordinary buckets. If it is not, long ones leave it more time for readings, and a
/// fault says so: small tools are found later, or not at all.
/// </summary>
public sealed class BoardPace
{
    /// <summary>
    /// With fewer readings a second than this in long buckets, three in each, the burst that moves the hole is left out too.
    /// </summary>
    public const int LeastInLongBuckets = 600;

    // A write to flash or a burst of typing makes a second slow, but not three in a row.
    private const int SlowSeconds = 3;

    private readonly DetectionCore _core;
    private readonly BucketReader _reader;
    private readonly Recorder _recorder;
    private int _slowSeconds;

    /// <summary>Initializes a new instance of the <see cref="BoardPace"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="reader">Reads the buckets.</param>
    /// <param name="recorder">Tells whether a recording is under way, in which the length must not change.</param>
    public BoardPace(DetectionCore core, BucketReader reader, Recorder recorder)
    {
        _core = core;
        _reader = reader;
        _recorder = recorder;
    }

    /// <summary>Judges the last second.</summary>
    /// <param name="readings">Readings taken in it.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Judge(int readings, long now)
    {
        DetectionCore core = _core;
        if (core.HasLongBuckets)
        {
            core.Faults.See(Fault.SlowBoard, readings, now);
            _reader.ClosesAtOnce |= readings < LeastInLongBuckets;
            return;
        }

        // A converter that fails also gives few readings, and that is not the board's pace. But on a board that takes longer
        // than a bucket for each, there is never a valid window.
        int others = core.Faults.Standing & ~FaultBits.Of(Fault.NoWindow);
        _slowSeconds = readings < Bucket.LeastReadingsASecond && others == 0 ? _slowSeconds + 1 : 0;
        if (_slowSeconds >= SlowSeconds && core.IsQuiet && !_recorder.IsOn)
        {
            _reader.UseLongBuckets();
            core.UseLongBuckets();
        }
    }
}
