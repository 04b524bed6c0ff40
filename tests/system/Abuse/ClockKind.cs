namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>How the clock goes in a stretch of time.</summary>
internal enum ClockKind
{
    Steady,

    /// <summary>Late by anything up to a fifth of a second.</summary>
    Late,

    /// <summary>It stands for some looks, then goes on.</summary>
    Stands,

    /// <summary>It has jumped forwards at the beginning.</summary>
    JumpsOn,

    /// <summary>It has jumped back at the beginning.</summary>
    JumpsBack,
}
