using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>A day with one tool that is switched on and off, for tests of one thing.</summary>
internal static class ShortDay
{
    /// <summary>Makes a day.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="seconds">Length of the day.</param>
    /// <param name="settings">Lines typed before it.</param>
    /// <param name="steps">Times at which the tool is switched, on first, in seconds.</param>
    /// <returns>The day.</returns>
    public static Day Of(ToolSpecification tool, double seconds, string[] settings, params double[] steps) => new()
    {
        Name = tool.Name,
        Seconds = seconds,
        Tools = [tool],
        Settings = settings,
        Steps = [.. steps.Select((at, i) => new DayStep((long)(at * 1e6), i % 2 == 0 ? DayAct.Start : DayAct.Stop, tool.Name))],
    };

    /// <summary>Makes a tool.</summary>
    /// <param name="kind">How it draws its current.</param>
    /// <param name="amperes">Running current, A rms.</param>
    /// <returns>The tool.</returns>
    public static ToolSpecification Tool(ToolKind kind, double amperes) =>
        new() { Name = "tool", Kind = kind, RatedAmperes = amperes };
}
