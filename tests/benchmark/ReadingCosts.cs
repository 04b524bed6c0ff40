namespace NanoDustSwitch.Benchmarks;

/// <summary>
/// Interpreted instructions a reading, at 2,000 readings a second on a quiet line, without the board's adapter. Those of the cost
/// meter: a test in tests/conformance compares them.
/// </summary>
internal static class ReadingCosts
{
    /// <summary>The whole core: filling the bucket, both lanes, floors, faults, vacuum control and gate.</summary>
    public const int Core = 101;

    /// <summary>Filling the bucket, the swing window.</summary>
    public const int FastLane = 51;

    /// <summary>What the slow lane adds.</summary>
    public const int SlowLane = 7;

    /// <summary>Half-second maximum.</summary>
    public const int HalfSecondMaximum = 22;

    /// <summary>Rms of a cycle.</summary>
    public const int CycleRms = 29;

    /// <summary>Raw swing of a cycle.</summary>
    public const int RawSwing = 20;
}
