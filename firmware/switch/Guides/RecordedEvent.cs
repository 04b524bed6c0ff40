namespace NanoDustSwitch.Firmware;

/// <summary>What can happen to the core between two buckets of a recording. The numbers are part of the format.</summary>
public enum RecordedEvent
{
    /// <summary>An event of the vacuum control: the figure is its number.</summary>
    Vacuum = 0,

    /// <summary>The relay's heartbeat stopped for too long: the figure is the gap in ms.</summary>
    RelayLost = 1,

    /// <summary>A person cleared the faults.</summary>
    Cleared = 2,
}
