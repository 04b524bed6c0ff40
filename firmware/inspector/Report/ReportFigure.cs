using NanoDustSwitch.Inspector.Charts;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Spectrum;
using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Simulator.Days;
using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace NanoDustSwitch.Inspector.Report;

/// <summary>The figures of a report, as drawings that a page can hold; sized for a telephone's screen.</summary>
internal static class ReportFigure
{
    /// <summary>Width of a drawing in its own units.</summary>
    public const int Width = 420;

    /// <summary>Height of a drawing in its own units.</summary>
    public const int Height = 300;

    private const float FontSize = 15;

    // Widths, by which these lines are known again.
    private const float Dashed = 1.6f;
    private const float Dotted = 1.7f;
    private const int MostPoints = 700;
    private const int CyclePoints = 200;
    private const double LeastAmperes = 0.02;
    private const double GreatestHertz = 1000;
    private static readonly double[] s_amperes = [0.001, 0.003, 0.01, 0.03, 0.1, 0.3, 1, 3, 10, 30, 100, 300];

    /// <summary>Draws one cycle of the mains.</summary>
    /// <param name="spectrum">What is in the current.</param>
    /// <returns>An SVG drawing.</returns>
    public static string Cycle(MainsSpectrum spectrum)
    {
        Plot plot = Empty("time in the cycle, ms", "current, A");
        (double Seconds, double Amperes)[] folded = spectrum.Folded();
        int each = Math.Max(1, folded.Length / MostPoints);
        Scatter points = plot.Add.ScatterPoints(Milliseconds(folded.Where((_, i) => i % each == 0)), ChartStyle.Sky);
        points.MarkerSize = 4;
        Line(plot, Milliseconds(spectrum.Cycle(CyclePoints)), ChartStyle.Vermilion);
        plot.Axes.SetLimitsX(0, 1000 / spectrum.Hertz);
        return Svg(plot);
    }

    /// <summary>Gives the frequency at which the drawn spectrum ends.</summary>
    /// <param name="spectrum">What is in the current.</param>
    /// <returns>The frequency in Hz.</returns>
    public static double End(MainsSpectrum spectrum) =>
        Math.Min(GreatestHertz, Math.Max(spectrum.Rate / 2, spectrum.Amperes.Length * spectrum.Hertz));

    /// <summary>Draws the spectrum, with the harmonics marked.</summary>
    /// <param name="spectrum">What is in the current.</param>
    /// <returns>An SVG drawing.</returns>
    public static string Lines(MainsSpectrum spectrum)
    {
        Plot plot = Empty("frequency, Hz", "current, A rms");
        double most = End(spectrum);
        (double Hertz, double Amperes)[] lines = [.. spectrum.Lines().Where(line => line.Hertz <= most)];
        double least = Math.Max(lines.Min(line => line.Amperes), spectrum.Amperes[0] / 3000);
        Line(plot, [.. lines.Select(line => Point(line.Hertz, line.Amperes))], ChartStyle.Blue);
        IEnumerable<Coordinates> harmonics = spectrum.Amperes.Select((amperes, i) => Point((i + 1) * spectrum.Hertz, amperes));
        Scatter marks = plot.Add.ScatterPoints(harmonics.Where(point => point.X <= most).ToArray(), ChartStyle.Vermilion);
        marks.MarkerSize = 6;
        plot.Axes.SetLimits(0, most, Math.Log10(least), Math.Log10(spectrum.Amperes[0] * 2));
        LogAmperes(plot);
        return Svg(plot);

        Coordinates Point(double hertz, double amperes) => new(hertz, Math.Log10(Math.Max(least, amperes)));
    }

    /// <summary>Draws the swing over time against its levels, with the vacuum below.</summary>
    /// <param name="run">The replay.</param>
    /// <returns>An SVG drawing.</returns>
    public static string Swing(ReplayRun run)
    {
        List<TracePoint> trace = run.Trace;
        Plot plot = Empty("time, s", "swing, A");
        double most = Math.Max(1, trace.Max(point => Math.Max(point.SwingAmperes, point.StartAmperes))) * 2;

        // Of many points the greatest and the least of each stretch are drawn: nothing is lost that could be seen.
        int each = Math.Max(1, trace.Count * 2 / MostPoints);
        List<Coordinates> swing = [];
        foreach (TracePoint[] stretch in trace.Chunk(each))
        {
            swing.Add(new Coordinates(stretch[0].Seconds, Log(stretch.Max(point => point.SwingAmperes))));
            swing.Add(new Coordinates(stretch[^1].Seconds, Log(stretch.Min(point => point.SwingAmperes))));
        }

        Line(plot, [.. swing], ChartStyle.Blue);
        Line(plot, Steps(point => point.StartAmperes), ChartStyle.Vermilion, Dashed);
        Line(plot, Steps(point => point.StopAmperes), ChartStyle.Black, Dotted);
        double foot = Math.Log10(LeastAmperes);
        double band = 0.06 * (Math.Log10(most) - foot);
        foreach ((double from, double to) in ReplayChart.VacuumOn(trace))
        {
            Rectangle rectangle = plot.Add.Rectangle(from, to, foot, foot + band);
            rectangle.FillColor = ChartStyle.Green;
            rectangle.LineColor = ChartStyle.Green;
        }

        plot.Axes.SetLimits(trace[0].Seconds, Math.Max(trace[^1].Seconds, trace[0].Seconds + 0.01), foot, Math.Log10(most));
        LogAmperes(plot);
        return Svg(plot);

        Coordinates[] Steps(Func<TracePoint, double> level) =>
        [
            .. trace.Where((_, i) => i % each == 0).Append(trace[^1])
                .Select(point => new Coordinates(point.Seconds, Log(level(point)))),
        ];
    }

    private static double Log(double amperes) => Math.Log10(Math.Max(LeastAmperes, amperes));

    private static Plot Empty(string below, string beside)
    {
        Plot plot = new();
        plot.Font.Set("sans-serif");
        plot.Grid.MajorLineColor = Colors.Black.WithOpacity(0.12);
        plot.XLabel(below, FontSize);
        plot.YLabel(beside, FontSize);
        foreach (IAxis axis in new IAxis[] { plot.Axes.Left, plot.Axes.Bottom })
        {
            axis.Label.Bold = false;
            axis.TickLabelStyle.FontSize = FontSize;
        }

        // Half of the last number stands beside the axis.
        plot.Axes.Right.MinimumSize = 30;
        return plot;
    }

    private static void Line(Plot plot, Coordinates[] points, Color color, float width = 1.5f)
    {
        Scatter line = plot.Add.ScatterLine(points, color);
        line.LineWidth = width;
    }

    private static Coordinates[] Milliseconds(IEnumerable<(double Seconds, double Amperes)> points) =>
        [.. points.Select(point => new Coordinates(point.Seconds * 1000, point.Amperes))];

    private static void LogAmperes(Plot plot) => plot.Axes.Left.TickGenerator =
        new NumericManual([.. s_amperes.Select(Math.Log10)], [.. s_amperes.Select(tick => $"{tick}")]);

    // The drawing library cannot dash a line in such a drawing; the page can.
    private static string Svg(Plot plot) => plot.GetSvgXml(Width, Height)
        .Replace($"stroke-width=\"{Dashed}\"", $"stroke-width=\"{Dashed}\" stroke-dasharray=\"8 4\"")
        .Replace($"stroke-width=\"{Dotted}\"", $"stroke-width=\"{Dotted}\" stroke-dasharray=\"2 3\"");
}
