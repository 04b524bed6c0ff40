namespace NanoDustSwitch.Detection;

/// <summary>The units of time, in microseconds: the unit in which every clock of the project counts.</summary>
/// <remarks>
/// A point in time, such as <c>now</c>, <c>_since</c> or <c>EndTime</c>, is a <c>long</c> in microseconds since the board came
/// up, and its name says no unit. A length of time that is kept as a plain number says its unit at the end of its name, as a
/// whole word: <c>LongestGapMicroseconds</c>, <c>RunOnMilliseconds</c>. So do currents and voltages:
/// <c>StartAtMilliamperes</c>.
/// </remarks>
public static class Time
{
    /// <summary>Microseconds in a millisecond.</summary>
    public const long Millisecond = 1000;

    /// <summary>Microseconds in a second.</summary>
    public const long Second = 1000 * Millisecond;

    /// <summary>Microseconds in a minute.</summary>
    public const long Minute = 60 * Second;

    /// <summary>Microseconds in an hour.</summary>
    public const long Hour = 60 * Minute;
}
