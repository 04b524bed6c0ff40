using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Simulator.Shop;
using ScottPlot;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>First and fourth start of a tool of each kind: the true current, and when the vacuum is commanded.</summary>
internal static class StartChart
{
    private const float Height = 190;
    private const float LabelHeight = 55;
    private const double Shown = 2.5;
    private const double Hertz = 50;

    private static readonly Color[] s_colors = [ChartStyle.Orange, ChartStyle.Blue];

    /// <summary>Draws.</summary>
    /// <param name="path">The file.</param>
    /// <param name="kinds">The kinds.</param>
    /// <param name="seed">Seed of the tools.</param>
    public static void Save(string path, StartKind[] kinds, long seed)
    {
        Plot[] panels = [.. kinds.Select((kind, i) => Panel(kind, new ShopRandom(seed, i), i == kinds.Length - 1))];
        foreach (Plot panel in panels[1..])
        {
            panel.HideLegend();
        }

        ChartFile.SavePng(path, panels, [.. panels.Select((_, i) => i == panels.Length - 1 ? Height + LabelHeight : Height)]);
    }

    private static Plot Panel(StartKind kind, ShopRandom random, bool isLast)
    {
        Plot panel = ChartStyle.Panel($"{kind.Name}\nrms / settled", 10, isLast ? LabelHeight : 10);
        StartLoad load = kind.Draw(random, Hertz);
        StartTrial trial = new(StartStudy.Paces[1], Hertz, random);
        double most = 1.5;
        for (int start = 0; start <= StartStudy.KnownFrom; start++)
        {
            load.Begin(random);
            Started started = trial.Start(load);
            if (start is 0 or StartStudy.KnownFrom)
            {
                Color color = s_colors[start == 0 ? 0 : 1];
                string name = start == 0 ? "first start" : "fourth start";
                Coordinates[] course = [.. trial.Course.TakeWhile(at => at.X <= Shown)];
                most = Math.Max(most, course.Max(at => at.Y));
                ChartStyle.AddLine(panel, course, color, name, default);
                ChartStyle.AddLine(
                    panel,
                    [new Coordinates(started.Delay, 0), new Coordinates(started.Delay, 1e3)],
                    color,
                    "its command",
                    LinePattern.Dashed);
            }
        }

        ChartStyle.SetTime(panel, 0, Shown, isLast);
        panel.Axes.SetLimitsY(0, 1.05 * most);
        return panel;
    }
}
