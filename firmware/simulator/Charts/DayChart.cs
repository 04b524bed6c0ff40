using NanoDustSwitch.Simulator.Days;
using ScottPlot;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>The picture of a day: the true currents, what the switch sees, and what it does.</summary>
internal static class DayChart
{
    private const int MostMarks = 75;
    private const int LongestTitle = 110;
    private const float TitleHeight = 45;
    private const float Gap = 12;
    private const float TimeHeight = 70;

    /// <summary>Draws a day into a PNG file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="title">Title of the picture.</param>
    /// <param name="trace">The day, in order of time.</param>
    /// <param name="marks">What happened, in order of time; null for nothing. More than there is room for are left out.</param>
    public static void Save(string path, string title, IReadOnlyList<TracePoint> trace, IReadOnlyList<ChartMark>? marks = null)
    {
        bool hasMarks = marks is { Count: > 0 and <= MostMarks };
        Plot currents = CurrentPanel.Draw(trace, hasMarks ? Gap : TitleHeight, Gap);
        Plot swing = SwingPanel.Draw(trace, Gap, Gap);
        Plot state = StatePanel.Draw(trace, Gap, TimeHeight);
        List<Plot> panels = [currents, swing, state];

        // The first point stands behind the first readings; the axis begins before them.
        double from = trace.Count > 0 ? Math.Floor(trace[0].Seconds * 100) / 100 : 0;
        double to = trace.Count > 1 ? trace[^1].Seconds : from + 1;
        if (hasMarks)
        {
            panels.ForEach(panel => MarkPanel.AddLines(panel, marks!));
            panels.Insert(0, MarkPanel.Draw(marks!, from, to, TitleHeight));
        }

        panels.ForEach(panel => ChartStyle.SetTime(panel, from, to, panel == state));
        panels[0].Title(title.Length > LongestTitle ? title[..LongestTitle] + "…" : title, ChartStyle.FontSize + 4);
        ChartFile.SavePng(path, panels, hasMarks ? [205, 240, 245, 310] : [330, 300, 370]);
    }
}
