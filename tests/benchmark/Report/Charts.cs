using NanoDustSwitch.Benchmarks.Methods;
using NanoDustSwitch.Benchmarks.Studies;
using NanoDustSwitch.Simulator.Charts;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace NanoDustSwitch.Benchmarks.Report;

/// <summary>What was found, as charts.</summary>
internal static class Charts
{
    private const float Height = 520;
    private const int Compared = 5;

    private static readonly Color[] s_colors =
    [
        ChartStyle.Blue, ChartStyle.Green, ChartStyle.Vermilion, ChartStyle.Orange, ChartStyle.Purple,
    ];
    private static readonly double[] s_currentTicks = [0.03, 0.05, 0.1, 0.2, 0.3, 0.5, 1, 2, 5, 10];
    private static readonly double[] s_timeTicks = [10, 20, 50, 100, 200, 500, 1000];

    /// <summary>Writes all.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="found">What was found.</param>
    /// <returns>The files.</returns>
    public static string[] Save(string folder, Findings found) =>
    [
        Save(folder, "detection.png", "How often a single window finds a small current", found.Rates.Select(Detection)),
        Save(folder, "time.png", "The smallest current that is found in the time allowed", found.Rates.Select(Time)),
        Save(folder, "delay.png", "How long it takes to see that a tool starts", found.Rates.Select(r => Delay(found, r.Rate))),
    ];

    private static Plot Detection(RateFindings found)
    {
        Plot panel = Panel($"windows that find it, %\n{found.Rate:#,0} readings a second");
        IReadOnlyList<double> currents = found.Sine.Currents;
        for (int i = 0; i < Compared; i++)
        {
            int method = i;
            Add(
                panel,
                currents.Select((amperes, at) => (amperes, 100 * found.Sine.Reaches(method, at, found.AlarmLevels[method]))),
                s_colors[i],
                found.Methods[i].Name);
        }

        double[] fine = [.. Enumerable.Range(0, 200).Select(i => currents[0] * Math.Pow(currents[^1] / currents[0], i / 199.0))];
        foreach ((double window, LinePattern pattern) in new[] { (0.02, LinePattern.Dashed), (0.4, LinePattern.Dotted) })
        {
            Add(
                panel,
                fine.Select(amperes => (amperes, 100 * Bound.Detection(
                    found.Rate * window,
                    amperes * Math.Sqrt(2) / Lines.Line.NoiseAmperes,
                    RateFindings.FalseAlarm))),
                ChartStyle.Black,
                $"best possible, {window * 1000:0} ms",
                pattern);
        }

        SetX(
            panel, s_currentTicks, currents[0], currents[^1], "current, A; one false alarm of a method in 10,000 windows");
        panel.Axes.SetLimitsY(0, 101);
        return panel;
    }

    private static Plot Time(RateFindings found)
    {
        Plot panel = Panel($"smallest current found, A\n{found.Rate:#,0} readings a second");
        double[] times = [.. Enumerable.Range(0, 81).Select(i => 0.01 * Math.Pow(100, i / 80.0))];
        for (int i = 0; i < Compared; i++)
        {
            int method = i;
            Add(
                panel,
                times.Select(time => (1000 * time, Math.Log10(found.Sine.Smallest(method, time))))
                    .Where(point => double.IsFinite(point.Item2)),
                s_colors[i],
                found.Methods[i].Name);
        }

        Add(
            panel,
            times.Select(time => (1000 * time, Math.Log10(Bound.AmperesIn(found.Rate, time)))),
            ChartStyle.Black,
            "best possible",
            LinePattern.Dashed);
        SetX(panel, s_timeTicks, 10, 1000, "time allowed, ms; found 9 times in 10, with one false start a year");
        panel.Axes.Left.TickGenerator = new NumericManual(
            [.. s_currentTicks.Select(Math.Log10)], [.. s_currentTicks.Select(tick => $"{tick}")]);
        panel.Axes.SetLimitsY(Math.Log10(0.02), Math.Log10(0.75));
        return panel;
    }

    private static Plot Delay(Findings found, int rate)
    {
        Plot panel = Panel($"from current to decision, ms\n{rate:#,0} readings a second, 60 Hz");
        Color[] colors = [ChartStyle.Blue, .. s_colors[2..]];
        foreach ((double part, LinePattern pattern) in new[] { (0.5, LinePattern.Solid), (0.99, LinePattern.Dotted) })
        {
            for (int i = 0; i < Findings.Deciders.Length; i++)
            {
                int decider = i;
                Add(
                    panel,
                    Findings.DelayCurrents.Select(amperes =>
                        (amperes, Math.Log10(1000 * found.Delays[(rate, Bench.Hertz, amperes)].Start(decider, part))))
                        .Where(point => double.IsFinite(point.Item2)),
                    colors[i],
                    part == 0.5 ? Findings.Deciders[i] : "",
                    pattern);
            }
        }

        SetX(
            panel,
            s_currentTicks,
            Findings.DelayCurrents[0],
            Findings.DelayCurrents[^1],
            "the tool's current, A; whole lines: half of all starts are seen by then, dotted: 99 of 100");
        panel.Axes.Left.TickGenerator = new NumericManual(
            [.. s_timeTicks.Select(Math.Log10)], [.. s_timeTicks.Select(tick => $"{tick}")]);
        panel.Axes.SetLimitsY(Math.Log10(5), Math.Log10(1000));
        return panel;
    }

    private static Plot Panel(string label)
    {
        Plot panel = ChartStyle.Panel(label, 45, 60);
        panel.Legend.FontSize = ChartStyle.SmallFontSize;
        return panel;
    }

    private static void SetX(Plot panel, double[] ticks, double from, double to, string label)
    {
        panel.Axes.Bottom.TickGenerator = new NumericManual([.. ticks.Select(Math.Log10)], [.. ticks.Select(tick => $"{tick}")]);
        panel.Axes.SetLimitsX(Math.Log10(from), Math.Log10(to));
        panel.XLabel(label, ChartStyle.FontSize);
        panel.Axes.Bottom.Label.Bold = false;
    }

    private static void Add(
        Plot panel, IEnumerable<(double X, double Y)> points, Color color, string name, LinePattern pattern = default)
    {
        Coordinates[] places = [.. points.Select(point => new Coordinates(Math.Log10(point.X), point.Y))];
        if (places.Length > 0)
        {
            ChartStyle.AddLine(panel, places, color, name, pattern);
        }
    }

    private static string Save(string folder, string name, string title, IEnumerable<Plot> panels)
    {
        string path = Path.Combine(folder, name);
        Plot[] all = [.. panels];
        all[0].Title(title, ChartStyle.FontSize + 4);
        ChartFile.SavePng(path, all, [.. all.Select(_ => Height)]);
        return path;
    }
}
