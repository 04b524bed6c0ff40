namespace NanoDustSwitch.Firmware;

/// <summary>The settings. The numbers are stored in flash: never give one a new meaning.</summary>
public enum SettingId
{
    /// <summary>Current at which a tool counts as running.</summary>
    StartAt = 0,

    /// <summary>Current below which it counts as stopped.</summary>
    StopBelow = 1,

    /// <summary>Buckets in a row that make a start.</summary>
    Confirm = 2,

    /// <summary>Time from the tool's start to the vacuum's.</summary>
    StartDelay = 3,

    /// <summary>Time the vacuum runs on.</summary>
    RunOn = 4,

    /// <summary>Rest of the relay between opening and closing.</summary>
    RestartGap = 5,

    /// <summary>Automatic starts a minute before the run-on is stretched.</summary>
    StartsAMinute = 6,

    /// <summary>Longest run of a tool that is followed.</summary>
    LongestRun = 7,

    /// <summary>Longest time on by hand.</summary>
    ByHand = 8,

    /// <summary>Run time of the vacuum between two looks at the filter.</summary>
    FilterReminder = 9,

    /// <summary>Sensor's gain.</summary>
    SensorGain = 10,

    /// <summary>Turns of the tool's wire through the sensor.</summary>
    Turns = 11,

    /// <summary>Swing of the quiet line.</summary>
    Noise = 12,

    /// <summary>Turns of the vacuum's wire through a sensor of its own.</summary>
    VacuumTurns = 13,
}
