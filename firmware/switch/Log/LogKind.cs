namespace NanoDustSwitch.Firmware;

/// <summary>Kinds of entries in the event log. The numbers are stored in flash; the first five are the core's notices.</summary>
public enum LogKind
{
    /// <summary>The vacuum's state changed.</summary>
    StateChanged = 0,

    /// <summary>A fault came up.</summary>
    FaultRaised = 1,

    /// <summary>A fault ended.</summary>
    FaultEnded = 2,

    /// <summary>The longest run ends soon.</summary>
    LongRunAhead = 3,

    /// <summary>The relay's heartbeat stopped for too long.</summary>
    RelayLost = 4,

    /// <summary>The board came up: first is the reason, figure the restarts in a row.</summary>
    CameUp = 5,

    /// <summary>Settings were saved.</summary>
    Saved = 6,

    /// <summary>The flash failed while saving: first is whose slot.</summary>
    SaveFailed = 7,

    /// <summary>A person cleared the faults.</summary>
    Cleared = 8,

    /// <summary>Settings in flash were out of range and fell back: figure is how many.</summary>
    FellBack = 9,

    /// <summary>The filter is due: figure is the run time since the last look, in minutes.</summary>
    FilterDue = 10,

    /// <summary>A tool was taught: figure is the new start-at in mA.</summary>
    Taught = 11,

    /// <summary>A part of the board could not be opened, or the flash failed: first is the part's bit.</summary>
    PartFailed = 12,

    /// <summary>The relay was opened for a moment to see whether the current goes: first is 1 when it did, figure the time in ms.</summary>
    Probed = 13,
}
