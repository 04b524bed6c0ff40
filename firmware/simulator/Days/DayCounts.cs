namespace NanoDustSwitch.Simulator.Days;

/// <summary>What the judge counted.</summary>
/// <param name="Starts">The starts that were asked for and made.</param>
/// <param name="Missed">The starts that were asked for and not made, or made too late.</param>
/// <param name="False">The starts that no current asked for.</param>
/// <param name="InSurge">The starts that were made inside the tool's start surge.</param>
/// <param name="Stayed">How often the vacuum would not stop.</param>
/// <param name="Unexpected">The faults that nothing in the day explains.</param>
/// <param name="Looks">How often the relay was opened for a look.</param>
/// <param name="Wild">The starts that wild readings made.</param>
/// <param name="WildTimes">How often there were wild readings.</param>
internal sealed record DayCounts(
    int Starts, int Missed, int False, int InSurge, int Stayed, int Unexpected, int Looks, int Wild = 0, int WildTimes = 0)
{
    /// <summary>Gets a value indicating whether nothing is wrong but for starts in the surge or by wild readings.</summary>
    public bool IsRight => Missed + False + Stayed + Unexpected == 0;

    /// <summary>Gets a value indicating whether nothing is wrong.</summary>
    public bool IsGood => IsRight && InSurge + Wild == 0;

    /// <summary>Adds up.</summary>
    /// <param name="days">What was counted in each.</param>
    /// <returns>The sums.</returns>
    public static DayCounts Sum(IEnumerable<DayCounts> days) => days.Aggregate(
        new DayCounts(0, 0, 0, 0, 0, 0, 0),
        (sum, day) => new DayCounts(
            sum.Starts + day.Starts,
            sum.Missed + day.Missed,
            sum.False + day.False,
            sum.InSurge + day.InSurge,
            sum.Stayed + day.Stayed,
            sum.Unexpected + day.Unexpected,
            sum.Looks + day.Looks,
            sum.Wild + day.Wild,
            sum.WildTimes + day.WildTimes));
}
