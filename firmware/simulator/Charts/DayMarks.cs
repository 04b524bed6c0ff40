using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>The steps of a day as marks of its chart.</summary>
internal static class DayMarks
{
    /// <summary>Gives the marks; a change of load is none, for the curve shows it.</summary>
    /// <param name="day">The day.</param>
    /// <returns>The marks, in order of time.</returns>
    public static IReadOnlyList<ChartMark> Of(Day day) =>
    [
        .. day.Steps.Where(step => step.Act != DayAct.Load)
            .Select(step => new ChartMark(step.At / 1e6, ActTable.Of(step.Act).Mark(step))),
    ];
}
