namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>
/// What a person does in the minute into which trouble is injected: start, stop, teach, save, watch, by hand, hold, off while the
/// tool runs, restart.
/// </summary>
internal static class ScriptedMinute
{
    /// <summary>Length in seconds.</summary>
    public const double Seconds = 60;

    private static readonly (double At, string What)[] s_steps =
    [
        (2.0, "run-on 1"),
        (2.5, "vacuum-turns 1"),
        (3.0, "save"),
        (4.0, "+saw"),
        (7.0, "-saw"),
        (9.5, "teach"),
        (9.8, "yes"),
        (15.5, "+saw"),
        (22.5, "-saw"),
        (23.5, "yes"),
        (30.0, "yes"),
        (32.0, "watch"),
        (32.5, "+saw"),
        (35.0, "x"),
        (36.0, "-saw"),
        (38.5, "+button"),
        (38.8, "-button"),
        (41.0, "+button"),
        (41.3, "-button"),
        (43.0, "+button"),
        (45.0, "-button"),
        (46.0, "+saw"),
        (47.0, "-saw"),
        (48.0, "+button"),
        (50.0, "-button"),
        (50.5, "run-on 1.5"),
        (51.0, "+saw"),
        (51.5, "save"),
        (52.6, "+button"),
        (52.9, "-button"),
        (54.0, "-saw"),
        (55.5, "status"),
        (56.5, "restart"),
        (56.8, "yes"),
    ];

    /// <summary>Gives the time of a step.</summary>
    /// <param name="step">Its number.</param>
    /// <returns>Shop time in microseconds; the last of all times when there is no such step.</returns>
    public static long TimeOf(int step) => step < s_steps.Length ? (long)(s_steps[step].At * 1e6) : long.MaxValue;

    /// <summary>Gives what is done at a step.</summary>
    /// <param name="step">Its number.</param>
    /// <returns>A line to be typed, or + or - before what is switched on or off.</returns>
    public static string What(int step) => s_steps[step].What;
}
