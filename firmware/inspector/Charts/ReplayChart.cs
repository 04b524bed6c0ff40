using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Simulator.Days;
using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace NanoDustSwitch.Inspector.Charts;

/// <summary>The picture of a replay: what the switch sees, and what it does with each of the settings.</summary>
internal static class ReplayChart
{
    private const float TitleHeight = 45;
    private const float Gap = 12;
    private const float TimeHeight = 70;
    private const float SwingHeight = 480;
    private const float RowHeight = 55;
    private const double Band = 0.45;

    // One for each of the settings: its levels, and its row below.
    private static readonly Color[] s_colors =
    [
        ChartStyle.Vermilion, ChartStyle.Green, ChartStyle.Purple, ChartStyle.Orange, ChartStyle.Sky, ChartStyle.Black,
        ChartStyle.Grey, ChartStyle.Yellow, Colors.SaddleBrown,
    ];

    /// <summary>Draws it into a PNG file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="choices">The settings.</param>
    /// <param name="runs">The replay with each.</param>
    public static void Save(string path, IReadOnlyList<SettingChoice> choices, IReadOnlyList<ReplayRun> runs)
    {
        List<TracePoint> trace = runs[0].Trace;
        Plot swing = runs.Count > 1
            ? SwingPanel.Draw(
                [.. runs.Select((run, i) => ($"{i + 1}: ", s_colors[i], s_colors[i], (IReadOnlyList<TracePoint>)run.Trace))],
                TitleHeight,
                Gap)
            : SwingPanel.Draw(trace, TitleHeight, Gap);
        Plot state = runs.Count > 1 ? Bands(choices, runs) : StatePanel.Draw(trace, Gap, TimeHeight);
        foreach (Plot panel in new[] { swing, state })
        {
            ChartStyle.SetTime(panel, trace[0].Seconds, trace[^1].Seconds, panel == state);
        }

        swing.Title(runs[0].Source.Name, ChartStyle.FontSize + 4);
        ChartFile.SavePng(
            path, [swing, state], [SwingHeight, runs.Count > 1 ? (RowHeight * runs.Count) + TimeHeight + Gap : 370]);
    }

    // A row for each of the settings: from where to where the vacuum was on, with the settings above it.
    private static Plot Bands(IReadOnlyList<SettingChoice> choices, IReadOnlyList<ReplayRun> runs)
    {
        Plot panel = ChartStyle.Panel("vacuum on", Gap, TimeHeight);
        for (int row = 0; row < runs.Count; row++)
        {
            foreach ((double from, double to) in VacuumOn(runs[row].Trace))
            {
                Rectangle band = panel.Add.Rectangle(from, to, -row - Band, -row);
                band.FillColor = s_colors[row];
                band.LineColor = s_colors[row];
            }

            Text label = panel.Add.Text($"{row + 1}: {choices[row].Title}", runs[row].Trace[0].Seconds, -row + (Band / 2));
            label.LabelFontSize = ChartStyle.FontSize;
            label.LabelAlignment = Alignment.MiddleLeft;
            label.OffsetX = 6;
        }

        panel.Axes.SetLimitsY(-runs.Count + Band, 0.5);
        panel.Axes.Left.TickGenerator = new NumericManual();
        return panel;
    }

    /// <summary>Gives the stretches in which the vacuum was on.</summary>
    /// <param name="trace">The replay.</param>
    /// <returns>From and to, in seconds.</returns>
    public static IEnumerable<(double From, double To)> VacuumOn(IReadOnlyList<TracePoint> trace)
    {
        int first = -1;
        for (int i = 0; i <= trace.Count; i++)
        {
            bool isOn = i < trace.Count && trace[i].IsCommanded;
            if (isOn && first < 0)
            {
                first = i;
            }
            else if (!isOn && first >= 0)
            {
                yield return (trace[first].Seconds, trace[Math.Min(i, trace.Count - 1)].Seconds);
                first = -1;
            }
        }
    }
}
