using System.Runtime.InteropServices;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>When a board takes its readings.</summary>
/// <param name="Name">What it is.</param>
/// <param name="ReadingSeconds">Time from one reading to the next.</param>
/// <param name="HoleSeconds">Time for which nothing is read once in a bucket, while the last one is closed.</param>
/// <param name="IsLong">Whether its buckets are long ones.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct StartPace(string Name, double ReadingSeconds, double HoleSeconds, bool IsLong)
{
    /// <summary>Gets the length of a bucket in s.</summary>
    public double BucketSeconds => 1e-6 * (IsLong ? Bucket.LongMicroseconds : Bucket.Microseconds);
}
