using NanoDustSwitch.Simulator.Days;
using ScottPlot;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>Panel of a day's chart: the true currents.</summary>
internal static class CurrentPanel
{
    /// <summary>Draws it.</summary>
    /// <param name="trace">The day.</param>
    /// <param name="top">Height above it in pixels.</param>
    /// <param name="bottom">Height below it in pixels.</param>
    /// <returns>The panel.</returns>
    public static Plot Draw(IReadOnlyList<TracePoint> trace, float top, float bottom)
    {
        Plot panel = ChartStyle.Panel("current, A rms", top, bottom);
        ChartStyle.AddLine(
            panel,
            [.. trace.Select(p => new Coordinates(p.Seconds, p.VacuumAmperes))],
            ChartStyle.Orange,
            "vacuum",
            LinePattern.Solid);
        ChartStyle.AddLine(
            panel,
            [.. trace.Select(p => new Coordinates(p.Seconds, p.ToolAmperes))],
            ChartStyle.Blue,
            "tools, true",
            LinePattern.Solid);
        double most = trace.Count > 0 ? Math.Max(1, trace.Max(p => Math.Max(p.ToolAmperes, p.VacuumAmperes))) : 1;
        panel.Axes.SetLimitsY(-0.03 * most, 1.05 * most);
        return panel;
    }
}
