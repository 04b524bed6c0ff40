namespace NanoDustSwitch.Firmware;

/// <summary>The settings. Their numbers are stored in flash, so a number never gets another meaning.</summary>
public enum SettingId
{
    /// <summary>Current at which a tool counts as running.</summary>
    StartAt = 0,

    /// <summary>Current below which it counts as stopped.</summary>
    StopBelow = 1,

    /// <summary>How many buckets in a row must show a tool before it counts as running.</summary>
    Confirm = 2,

    /// <summary>Time from the tool's start to the vacuum's.</summary>
    StartDelay = 3,

    /// <summary>How long the vacuum runs on after the tool.</summary>
    RunOn = 4,

    /// <summary>How long the relay stays open at least before it closes again.</summary>
    RestartGap = 5,

    /// <summary>At so many automatic starts in a minute the run-on is stretched.</summary>
    StartsAMinute = 6,

    /// <summary>How long a tool's run is followed at most.</summary>
    LongestRun = 7,

    /// <summary>How long the vacuum stays on by hand at most.</summary>
    ByHand = 8,

    /// <summary>Run time of the vacuum between two looks at the filter.</summary>
    FilterReminder = 9,

    /// <summary>Sensor's gain.</summary>
    SensorGain = 10,

    /// <summary>Turns of the tool's wire through the sensor.</summary>
    Turns = 11,

    /// <summary>Swing of the quiet line, from which the noise floor starts.</summary>
    Noise = 12,

    /// <summary>Turns of the vacuum's wire through a sensor of its own.</summary>
    VacuumTurns = 13,
}
