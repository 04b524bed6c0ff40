using NanoDustSwitch.Simulator.Days;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>Panel of a day's chart: what the switch sees, against its levels, so that small tools and large ones show.</summary>
internal static class SwingPanel
{
    private const double Least = 0.02;

    private static readonly double[] s_ticks = [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    /// <summary>Draws it.</summary>
    /// <param name="trace">The day.</param>
    /// <param name="top">Height above it in pixels.</param>
    /// <param name="bottom">Height below it in pixels.</param>
    /// <returns>The panel.</returns>
    public static Plot Draw(IReadOnlyList<TracePoint> trace, float top, float bottom)
    {
        Plot panel = ChartStyle.Panel("seen by the switch, A", top, bottom);
        Add(panel, trace, p => p.SwingAmperes, ChartStyle.Blue, "swing", LinePattern.Solid);
        Add(panel, trace, p => p.StartAmperes, ChartStyle.Vermilion, "start level", LinePattern.Dashed);
        Add(panel, trace, p => p.StopAmperes, ChartStyle.Black, "stop level", LinePattern.Dotted);
        double most = trace.Count > 0 ? trace.Max(p => Math.Max(p.SwingAmperes, p.StartAmperes)) : 0;
        panel.Axes.SetLimitsY(Math.Log10(Least), Math.Log10(1.2 * Math.Max(1, most)));
        panel.Axes.Left.TickGenerator = new NumericManual(
            [.. s_ticks.Select(Math.Log10)], [.. s_ticks.Select(tick => $"{tick}")]);
        return panel;
    }

    // A current of nothing has no logarithm; it is drawn along the lower edge.
    private static void Add(
        Plot panel,
        IReadOnlyList<TracePoint> trace,
        Func<TracePoint, double> amperes,
        Color color,
        string name,
        LinePattern pattern)
    {
        Coordinates[] points = [.. trace.Select(p => new Coordinates(p.Seconds, Math.Log10(Math.Max(Least, amperes(p)))))];
        ChartStyle.AddLine(panel, points, color, name, pattern);
    }
}
