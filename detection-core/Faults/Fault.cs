namespace NanoDustSwitch.Detection;

/// <summary>What can be wrong. The numbers are stored in flash.</summary>
public enum Fault
{
    /// <summary>The sensor's line stands at a rail: open, unplugged or shorted.</summary>
    SensorAtRail = 0,

    /// <summary>The line's mean is outside the band in which a sensor rests.</summary>
    MidpointOut = 1,

    /// <summary>Every reading is the same.</summary>
    SensorFrozen = 2,

    /// <summary>The converter's reads fail.</summary>
    ConverterFails = 3,

    /// <summary>There has been no valid window for a second.</summary>
    NoWindow = 4,

    /// <summary>The clock stands still or runs backwards.</summary>
    ClockStands = 5,

    /// <summary>The tool's current clips at a rail; the reading is a lower bound.</summary>
    OverRange = 6,

    /// <summary>The noise floor has reached its cap; small tools are seen by the slow lane only.</summary>
    Noisy = 7,

    /// <summary>More starts a minute than allowed; the run-on is stretched.</summary>
    ShortCycling = 8,

    /// <summary>The tool ran longer than the longest run; the vacuum waits for its stop.</summary>
    RanTooLong = 9,

    /// <summary>Both copies of the settings are bad; safe defaults are in use.</summary>
    SettingsLost = 10,

    /// <summary>The board restarted itself again and again.</summary>
    RestartLoop = 11,

    /// <summary>The relay's line could not be opened: nothing can close the relay.</summary>
    RelayLine = 12,

    /// <summary>The relay was told to close, and the vacuum draws nothing on its own line.</summary>
    VacuumIdle = 13,

    /// <summary>The relay was told to open, and the vacuum draws its current all the same.</summary>
    VacuumStays = 14,

    /// <summary>What is seen on the tool's line is the vacuum's own current: our relay feeds the sensed line.</summary>
    OwnCurrent = 15,
}
