namespace NanoDustSwitch.Detection;

/// <summary>
/// A fixed slice of time, 2.5 ms long, with what the converter read in it: the one contract between a board and the core.
/// </summary>
/// <remarks>
/// 2.5 ms is an eighth of a cycle at 50 Hz and about a seventh at 60 Hz, so the same buckets serve both. A board that is too slow
/// for them takes long ones of 5 ms (see <see cref="DetectionCore.UseLongBuckets"/>).
/// The members are fields, because each call costs the device five to ten plain instructions more.
/// </remarks>
public sealed class Bucket
{
    /// <summary>Length of a bucket in microseconds.</summary>
    public const int Microseconds = 2500;

    /// <summary>Length of a long bucket in microseconds: a quarter of a cycle at 50 Hz.</summary>
    public const int LongMicroseconds = 2 * Microseconds;

    /// <summary>A board that takes fewer readings a second than this in ordinary buckets takes long ones.</summary>
    public const int LeastReadingsASecond = 1000;

    /// <summary>Buckets in one second.</summary>
    public const int ASecond = (int)Time.Second / Microseconds;

    /// <summary>Time at which the bucket ends, in microseconds.</summary>
    public long EndTime;

    /// <summary>Number of good readings, 0 or more; the converter's drop-outs and failed reads are not counted.</summary>
    public int Count;

    /// <summary>Sum of the good readings, in counts of the converter.</summary>
    public int Sum;

    /// <summary>Least good reading in counts; meaningless while <see cref="Count"/> is 0.</summary>
    public int Least;

    /// <summary>Greatest good reading in counts; meaningless while <see cref="Count"/> is 0.</summary>
    public int Greatest;

    /// <summary>How many of the good readings stood at the lower rail.</summary>
    public int AtLowRail;

    /// <summary>How many of the good readings stood at the upper rail.</summary>
    public int AtHighRail;

    /// <summary>Number of reads that failed, or gave a number that the converter cannot give.</summary>
    public int Failed;

    /// <summary>
    /// True when no read failed, no reading stood at a rail and the readings differ: no fault of the sensor can be in such a
    /// bucket, and nobody needs to look closer. False does not mean that something is wrong.
    /// </summary>
    public bool IsOrdinary;

    /// <summary>One reading of the vacuum's own line in counts; negative where none is fitted or the read failed.</summary>
    public int VacuumReading = -1;
}
