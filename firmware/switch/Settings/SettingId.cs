namespace NanoDustSwitch.Firmware;

/// <summary>The settings. Their numbers are stored in flash, so a number never gets another meaning.</summary>
public enum SettingId
{
    /// <summary>Current at which a tool counts as running, in mA.</summary>
    StartAt = 0,

    /// <summary>Current below which it counts as stopped, in mA.</summary>
    StopBelow = 1,

    /// <summary>How many buckets in a row must show a tool before it counts as running.</summary>
    Confirm = 2,

    /// <summary>Time from the tool's start to the vacuum's, in ms; -1 for after the tool's start surge.</summary>
    StartDelay = 3,

    /// <summary>How long the vacuum runs on after the tool, in ms.</summary>
    RunOn = 4,

    /// <summary>Shortest time for which the relay stays open before it closes again, in ms.</summary>
    RestartGap = 5,

    /// <summary>With this many automatic starts in a minute, the run-on is stretched to 60 s.</summary>
    StartsAMinute = 6,

    /// <summary>Longest run of a tool that the vacuum follows, in ms; 0 for no limit.</summary>
    LongestRun = 7,

    /// <summary>Longest time for which the vacuum stays on by hand, in ms.</summary>
    ByHand = 8,

    /// <summary>Run time of the vacuum after which the filter is due for a look, in ms; 0 for never.</summary>
    FilterReminder = 9,

    /// <summary>What the sensor gives for an ampere, in µV/A.</summary>
    SensorGain = 10,

    /// <summary>Turns of the tool's wire through the sensor.</summary>
    Turns = 11,

    /// <summary>Swing of the quiet line, with which the noise floor starts, in mA.</summary>
    Noise = 12,

    /// <summary>Turns of the vacuum's wire through a sensor of its own; 0 when there is none.</summary>
    VacuumTurns = 13,

    /// <summary>Current that the tool's circuit carries for long, in mA.</summary>
    Circuit = 14,
}
