namespace NanoDustSwitch.Firmware;

/// <summary>
/// What may keep the vacuum on, as far as the currents tell. The numbers are stored in flash: a number never changes its meaning.
/// </summary>
public enum StayReason
{
    /// <summary>It has been on for less than a minute, or is off, or runs on after the tool.</summary>
    None = 0,

    /// <summary>The current has changed within the last minute, as that of a tool at work does.</summary>
    Changing = 1,

    /// <summary>The current has been steady for a minute, at more than half of the most in this run.</summary>
    Steady = 2,

    /// <summary>
    /// The current has been steady for a minute, at half of the most in this run or less: the tool may have stopped.
    /// </summary>
    Fallen = 3,

    /// <summary>The current has been steady for a minute, at what the sensor on the vacuum's line shows.</summary>
    VacuumsOwn = 4,

    /// <summary>It is on by hand, and a tool runs.</summary>
    ByHandWithTool = 5,

    /// <summary>It is on by hand, and no tool runs.</summary>
    ByHand = 6,
}
