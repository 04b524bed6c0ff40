using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Days;
using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>Panel of a day's chart: the switch's state, a row for each, and its relay.</summary>
internal static class StatePanel
{
    private const double HalfBand = 0.36;

    // From the top row down: first those with the vacuum on.
    private static readonly (VacuumState State, Color Color)[] s_rows =
    [
        (VacuumState.ByHand, ChartStyle.Blue),
        (VacuumState.On, ChartStyle.Green),
        (VacuumState.RunOn, ChartStyle.Sky),
        (VacuumState.Starting, ChartStyle.Orange),
        (VacuumState.Idle, ChartStyle.Grey),
        (VacuumState.UntilStop, ChartStyle.Yellow),
        (VacuumState.Held, ChartStyle.Purple),
        (VacuumState.Fault, ChartStyle.Vermilion),
    ];

    /// <summary>Draws it.</summary>
    /// <param name="trace">The day.</param>
    /// <param name="top">Height above it in pixels.</param>
    /// <param name="bottom">Height below it in pixels.</param>
    /// <returns>The panel.</returns>
    public static Plot Draw(IReadOnlyList<TracePoint> trace, float top, float bottom)
    {
        Plot panel = ChartStyle.Panel("state of the switch", top, bottom);
        AddBands(panel, trace);
        AddSteps(panel, trace, p => p.IsCommanded, 1, ChartStyle.Black, "told to close");
        AddSteps(panel, trace, p => p.IsClosed, 2, ChartStyle.Orange, "contact closed");
        panel.Axes.SetLimitsY(-s_rows.Length + 0.4, 2.6);
        panel.Axes.Left.TickGenerator = new NumericManual(
            [2, 1, .. Enumerable.Range(0, s_rows.Length).Select(row => (double)-row)],
            ["contact", "relay", .. s_rows.Select(row => StateText.Name(row.State))]);
        return panel;
    }

    private static void AddBands(Plot panel, IReadOnlyList<TracePoint> trace)
    {
        int first = 0;
        for (int i = 1; i <= trace.Count; i++)
        {
            if (i < trace.Count && trace[i].State == trace[first].State)
            {
                continue;
            }

            int row = Array.FindIndex(s_rows, entry => entry.State == trace[first].State);
            double end = trace[Math.Min(i, trace.Count - 1)].Seconds;
            Rectangle band = panel.Add.Rectangle(trace[first].Seconds, end, -row - HalfBand, -row + HalfBand);
            band.FillColor = s_rows[row].Color;

            // The outline keeps a band of a moment visible.
            band.LineColor = s_rows[row].Color;
            band.LineWidth = 2;
            first = i;
        }
    }

    private static void AddSteps(
        Plot panel, IReadOnlyList<TracePoint> trace, Func<TracePoint, bool> isOn, double row, Color color, string name)
    {
        Coordinates[] points = [.. trace.Select(p => new Coordinates(p.Seconds, row + (isOn(p) ? HalfBand : -HalfBand)))];
        Scatter line = panel.Add.ScatterLine(points, color);
        line.ConnectStyle = ConnectStyle.StepHorizontal;
        line.LineWidth = 2;
        line.LegendText = name;
    }
}
