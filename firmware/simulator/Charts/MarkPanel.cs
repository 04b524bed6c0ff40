using ScottPlot;
using ScottPlot.Plottables;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>The strip above a chart in which stands what happened.</summary>
internal static class MarkPanel
{
    // Between two texts that stand on end, in pixels.
    private const double Distance = 16;

    private const double TextFoot = 0.16;
    private const int MostLetters = 18;

    /// <summary>Draws it.</summary>
    /// <param name="marks">What happened, in order of time.</param>
    /// <param name="from">First second of the chart.</param>
    /// <param name="to">Last second of the chart.</param>
    /// <param name="top">Height above it in pixels.</param>
    /// <returns>The panel.</returns>
    public static Plot Draw(IReadOnlyList<ChartMark> marks, double from, double to, float top)
    {
        Plot panel = ChartStyle.Panel("", top, 0);
        panel.HideGrid();
        panel.Axes.SetLimitsY(0, 1);
        panel.Axes.Frameless();
        double[] places = Spread(marks, from, to);
        for (int i = 0; i < marks.Count; i++)
        {
            string text = marks[i].Text;
            Text label = panel.Add.Text(
                text.Length > MostLetters ? text[..MostLetters] + "…" : text, places[i], TextFoot);
            label.LabelFontSize = ChartStyle.SmallFontSize;
            label.LabelRotation = -90;
            label.LabelAlignment = Alignment.MiddleLeft;
            LinePlot line = panel.Add.Line(marks[i].Seconds, 0, places[i], TextFoot - 0.02);
            line.LineColor = ChartStyle.Grey;
        }

        return panel;
    }

    /// <summary>Marks the times in another panel.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="marks">What happened.</param>
    public static void AddLines(Plot panel, IReadOnlyList<ChartMark> marks)
    {
        foreach (ChartMark mark in marks)
        {
            panel.Add.VerticalLine(mark.Seconds, 1, ChartStyle.Grey.WithOpacity(0.5), LinePattern.Dotted);
        }
    }

    // Moves the texts apart where they would overlap: first all to the right, then back from the right edge.
    private static double[] Spread(IReadOnlyList<ChartMark> marks, double from, double to)
    {
        double distance = Math.Min(Distance * (to - from) / ChartStyle.InnerWidth, (to - from) / marks.Count);
        double[] places = [.. marks.Select(mark => mark.Seconds)];
        double edge = from + (distance / 2);
        for (int i = 0; i < places.Length; i++)
        {
            places[i] = Math.Max(places[i], edge);
            edge = places[i] + distance;
        }

        edge = to - (distance / 2);
        for (int i = places.Length - 1; i >= 0 && places[i] > edge; i--)
        {
            places[i] = edge;
            edge -= distance;
        }

        return places;
    }
}
