namespace NanoDustSwitch.Firmware;

/// <summary>
/// What can stand between two buckets of a recording: what happened to the core, and readings as they came, which change nothing. The
/// numbers are part of the format.
/// </summary>
public enum RecordedEvent
{
    /// <summary>An event of the vacuum control: the figure is its number.</summary>
    Vacuum = 0,

    /// <summary>The relay's heartbeat stopped for too long: the figure is the gap in ms.</summary>
    RelayLost = 1,

    /// <summary>A person cleared the faults.</summary>
    Cleared = 2,

    /// <summary>Readings as they came follow in runs without a hole: the figure is the number of runs.</summary>
    Burst = 3,

    /// <summary>Head of a run.</summary>
    Run = 4,

    /// <summary>Some readings of a run.</summary>
    Readings = 5,
}
