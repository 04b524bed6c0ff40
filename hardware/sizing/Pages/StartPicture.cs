using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using NanoDustSwitch.Sizing.Trials;
using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace NanoDustSwitch.Sizing.Pages;

/// <summary>A circuit's start currents against its breaker, large enough in all its parts for a phone.</summary>
/// <param name="circuit">The circuit.</param>
/// <param name="lines">The starts.</param>
internal sealed class StartPicture(Circuit circuit, IReadOnlyList<StartLine> lines)
{
    private const int Width = 900;
    private const int Height = 960;
    private const float Text = 24;
    private const float Stroke = 4;
    private const double Hour = 3600;
    private const double LeastSeconds = 0.01;
    private const double ShownSeconds = 3;

    // Room above the curves, where the legend hides nothing.
    private const double LegendDecades = 1.9;
    private const double LegendPart = 1.35;

    /// <summary>Draws the currents over the time.</summary>
    /// <returns>A PNG file.</returns>
    public byte[] OverTime()
    {
        Plot plot = Empty("current, A rms");
        plot.Title("The currents over time", Text);
        foreach (StartLine line in lines)
        {
            Line(plot, line, [.. line.Course.Select(point => (point.Seconds, point.Amperes))]);
        }

        HorizontalLine rating = plot.Add.HorizontalLine(
            circuit.Breaker.Amperes, Stroke / 2, ChartStyle.Black, LinePattern.Dashed);
        rating.LegendText = $"breaker {circuit.BreakerText}";
        plot.Axes.Bottom.TickGenerator = new NumericFixedInterval(0.5);
        plot.XLabel("time after the tool's switch, s", Text);
        plot.Axes.Bottom.Label.Bold = false;
        double top = lines.Max(line => line.Course.Max(point => point.Amperes));
        plot.Axes.SetLimits(0, ShownSeconds, 0, LegendPart * Math.Max(top, circuit.Breaker.Amperes));
        return Png(plot, Alignment.UpperRight);
    }

    /// <summary>Draws how long each current lasts against how long the breaker bears it.</summary>
    /// <returns>A PNG file.</returns>
    public byte[] AgainstCurve()
    {
        Plot plot = Empty("the current lasts at least this long");
        plot.Title("How long a current lasts, and when the breaker trips", Text);
        double rated = circuit.Breaker.Amperes;
        double last = Math.Max(
            1.3 * Breakers.Of(circuit.Curve).To * rated, 1.2 * lines.Max(line => line.Course.Max(point => point.Amperes)));
        double first = 0.5 * rated;
        double[] currents = [.. Enumerable.Range(0, 400).Select(i => first * Math.Pow(last / first, i / 399.0))];
        BreakerTrial[] trials = [.. currents.Select(amperes => new BreakerTrial(circuit, Constant(amperes)))];
        (double X, double Y)[] soon =
            [.. currents.Zip(trials, (x, trial) => (x, Math.Clamp(trial.SoonTrip, LeastSeconds, Hour)))];
        (double Multiple, double Seconds)[] limits = Breakers.Of(circuit.Curve).MustTrip;

        // Below its magnet's upper edge a breaker has tripped by the time that stands for this current or a lower one.
        (double X, double Y)[] late =
        [
            .. currents.Zip(trials, (x, trial) => (x, Math.Clamp(
                x >= Breakers.Of(circuit.Curve).To * rated ? trial.LateTrip
                    : limits.Where(limit => limit.Multiple * rated <= x).Min(limit => (double?)limit.Seconds) ?? Hour,
                LeastSeconds,
                Hour))),
        ];
        Polygon band = plot.Add.Polygon(
            [.. soon.Concat(late.Reverse()).Select(point => new Coordinates(Log(point.X), Log(point.Y)))]);
        band.FillColor = ChartStyle.Orange.WithOpacity(0.35);
        band.LineWidth = 0;
        band.LegendText = "may trip";
        StartLine soonest = new($"{circuit.BreakerText} trips, soonest", ChartStyle.Vermilion, []);
        Line(plot, soonest, [.. soon.Select(point => (Log(point.X), Log(point.Y)))]);
        Markers marks = plot.Add.Markers(
            limits.Select(limit => new Coordinates(Log(limit.Multiple * rated), Log(limit.Seconds))).ToArray(),
            MarkerShape.FilledDiamond,
            14,
            ChartStyle.Black);
        marks.LegendText = "has tripped by then";
        foreach (StartLine line in lines)
        {
            Line(plot, line, [.. Durations(line.Course).Select(point => (Log(point.Amperes), Log(point.Seconds)))]);
        }

        plot.Axes.Bottom.TickGenerator = Ticks([1, 2, 5, 10, 20, 50, 100, 200, 500, 1000], value => $"{value:0}");
        plot.Axes.Left.TickGenerator = Ticks(
            [0.01, 0.1, 1, 10, 60, 600, 3600],
            value => value < 60 ? $"{value} s" : value < 3600 ? $"{value / 60:0} min" : "1 h");
        plot.XLabel("current, A rms", Text);
        plot.Axes.Bottom.Label.Bold = false;
        double least = lines.Min(line => line.Course[^1].Amperes);
        plot.Axes.SetLimits(Log(Math.Min(first, 0.8 * least)), Log(last), Log(LeastSeconds), Log(Hour) + LegendDecades);
        return Png(plot, Alignment.UpperRight);
    }

    private static Plot Empty(string label)
    {
        Plot plot = ChartStyle.Panel(label, 20, 90);
        plot.Layout.Fixed(new PixelPadding(130, 25, 90, 60));
        plot.Axes.Left.Label.FontSize = Text;
        plot.Axes.Left.TickLabelStyle.FontSize = Text;
        plot.Axes.Bottom.TickLabelStyle.FontSize = Text;
        return plot;
    }

    private static void Line(Plot plot, StartLine line, (double X, double Y)[] points)
    {
        Scatter scatter = plot.Add.ScatterLine(points.Select(point => new Coordinates(point.X, point.Y)).ToArray(), line.Color);
        scatter.LineWidth = Stroke;
        scatter.LegendText = line.Name;
    }

    private static byte[] Png(Plot plot, Alignment legend)
    {
        plot.HideLegend();
        Legend inside = plot.ShowLegend(legend);
        inside.FontSize = Text;
        inside.BackgroundColor = Colors.White.WithOpacity(0.85);
        using Image image = plot.GetImage(Width, Height);
        return image.GetImageBytes(ImageFormat.Png);
    }

    private static IEnumerable<(double Seconds, double Amperes)> Constant(double amperes)
    {
        for (int i = 0; i <= 1000; i++)
        {
            yield return (i * LeastSeconds, amperes);
        }
    }

    // How long a start is at or above each current; its last current goes on for an hour.
    private static IEnumerable<(double Amperes, double Seconds)> Durations(IReadOnlyList<(double Seconds, double Amperes)> course)
    {
        double step = course[1].Seconds - course[0].Seconds;
        double running = course[^1].Amperes;
        yield return (running, Hour);
        IEnumerable<IGrouping<double, int>> levels = course.Select((point, i) => (point.Amperes, i))
            .GroupBy(pair => pair.Amperes, pair => pair.i)
            .Where(level => level.Key > running)
            .OrderBy(level => level.Key);
        foreach (IGrouping<double, int> level in levels)
        {
            yield return (level.Key, Math.Max(LeastSeconds, step * course.Count(point => point.Amperes >= level.Key)));
        }
    }

    private static NumericManual Ticks(double[] values, Func<double, string> label) =>
        new([.. values.Select(Log)], [.. values.Select(label)]);

    private static double Log(double value) => Math.Log10(value);
}
