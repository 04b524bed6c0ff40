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
    public static Plot Draw(IReadOnlyList<TracePoint> trace, float top, float bottom) =>
        Draw([("", ChartStyle.Vermilion, ChartStyle.Black, trace)], top, bottom);

    /// <summary>Draws the swing of the first, and the levels of each.</summary>
    /// <param name="traces">Of each: what its levels' names begin with, the colours of start and stop level, and what came of it.
    /// </param>
    /// <param name="top">Height above it in pixels.</param>
    /// <param name="bottom">Height below it in pixels.</param>
    /// <returns>The panel.</returns>
    public static Plot Draw(
        IReadOnlyList<(string Name, Color Start, Color Stop, IReadOnlyList<TracePoint> Trace)> traces, float top, float bottom)
    {
        Plot panel = ChartStyle.Panel("seen by the switch, A", top, bottom);
        Add(panel, traces[0].Trace, p => p.SwingAmperes, ChartStyle.Blue, "swing", LinePattern.Solid);
        foreach ((string name, Color start, Color stop, IReadOnlyList<TracePoint> trace) in traces)
        {
            Add(panel, trace, p => p.StartAmperes, start, name + "starts at", LinePattern.Dashed);
            Add(panel, trace, p => p.StopAmperes, stop, name + "stops below", LinePattern.Dotted);
        }

        double most = traces.SelectMany(one => one.Trace).Max(p => (double?)Math.Max(p.SwingAmperes, p.StartAmperes)) ?? 0;
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
