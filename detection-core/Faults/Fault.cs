namespace NanoDustSwitch.Detection;

/// <summary>
/// What can be wrong. The numbers are stored in flash and in recordings, so a number never changes its meaning; a new fault gets
/// the next one. What is done about each fault is in <see cref="FaultTable"/>.
/// </summary>
public enum Fault
{
    /// <summary>The sensor's line stays at one end of its range: the sensor is unplugged, broken or shorted.</summary>
    SensorAtRail = 0,

    /// <summary>The mean of the sensor's line is not where a sensor without current rests.</summary>
    MidpointOut = 1,

    /// <summary>Every reading is the same.</summary>
    SensorFrozen = 2,

    /// <summary>The converter cannot be read.</summary>
    ConverterFails = 3,

    /// <summary>For more than a second too many readings were missing to measure a current.</summary>
    NoWindow = 4,

    /// <summary>The clock stands still or runs backwards.</summary>
    ClockStands = 5,

    /// <summary>The tool draws more than the sensor can show.</summary>
    OverRange = 6,

    /// <summary>The line is so noisy that small tools are found only after half a second.</summary>
    Noisy = 7,

    /// <summary>The vacuum started more often in a minute than the settings allow, so its run-on is longer.</summary>
    ShortCycling = 8,

    /// <summary>The tool ran longer than the settings allow. The vacuum stays off until the tool has stopped.</summary>
    RanTooLong = 9,

    /// <summary>Both copies of the settings in flash are bad. Safe defaults are in use.</summary>
    SettingsLost = 10,

    /// <summary>The board has restarted again and again, and nobody has asked for it.</summary>
    RestartLoop = 11,

    /// <summary>The pin of the relay could not be opened, so nothing can close the relay.</summary>
    RelayLine = 12,

    /// <summary>The relay was told to close, but the vacuum draws nothing.</summary>
    VacuumIdle = 13,

    /// <summary>The relay was told to open, but the vacuum draws its current all the same.</summary>
    VacuumStays = 14,

    /// <summary>The vacuum's own current runs through the tool's sensor.</summary>
    OwnCurrent = 15,

    /// <summary>The heartbeat paused so often that the relay may have dropped under load again and again.</summary>
    HeartbeatLost = 16,

    /// <summary>The board is too slow for ordinary buckets and takes long ones.</summary>
    SlowBoard = 17,
}
