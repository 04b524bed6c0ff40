namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>What the readings of a stretch of time are like.</summary>
internal enum LineKind
{
    Quiet,
    Tool,
    Walk,
    LowRail,
    HighRail,
    Frozen,

    /// <summary>Any counts of the converter.</summary>
    Wild,

    /// <summary>Any number at all, its extremes and failed reads among them.</summary>
    Extremes,
    Failing,

    /// <summary>Readings that differ, and every bucket of them like the last: no swing at all.</summary>
    Even,

    /// <summary>No readings.</summary>
    Silent,
}
