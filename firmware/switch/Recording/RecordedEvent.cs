namespace NanoDustSwitch.Firmware;

/// <summary>
/// What a recording can hold between two buckets: what happened to the core, and single readings, which a replay does not need
/// for its decisions. The numbers are part of the format.
/// </summary>
public enum RecordedEvent
{
    /// <summary>A person asked something of the vacuum. Figure: the number of the vacuum event.</summary>
    Vacuum = 0,

    /// <summary>The relay's heartbeat paused for too long. Figure: the length of the pause in ms.</summary>
    RelayLost = 1,

    /// <summary>A person cleared the faults. The figure is 0.</summary>
    Cleared = 2,

    /// <summary>
    /// A burst of single readings follows, in runs without a hole between readings. Figure: the number of runs.
    /// </summary>
    Burst = 3,

    /// <summary>The head of a run: how many readings it has, when it begins, and how long it takes.</summary>
    Run = 4,

    /// <summary>Some readings of a run.</summary>
    Readings = 5,
}
