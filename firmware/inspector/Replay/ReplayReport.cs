using NanoDustSwitch.Simulator.Days;
using Spectre.Console;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>Prints replays: one with its timeline, several side by side.</summary>
internal static class ReplayReport
{
    private const int LongestTimeline = 40;

    /// <summary>Prints.</summary>
    /// <param name="choices">The settings.</param>
    /// <param name="runs">The replay with each.</param>
    public static void Print(IReadOnlyList<SettingChoice> choices, IReadOnlyList<ReplayRun> runs)
    {
        ReplaySource source = runs[0].Source;
        AnsiConsole.MarkupLineInterpolated($"[bold]{source.Name}[/], {source.Seconds:0.00} s: {source.Understood}");
        AnsiConsole.WriteLine();
        for (int i = 0; i < runs.Count; i++)
        {
            PrintTimeline(runs.Count > 1 ? choices[i].Title : "", runs[i].Timeline, LongestTimeline / runs.Count);
        }

        Table table = new Table().Border(TableBorder.Rounded).AddColumn("");
        foreach (SettingChoice choice in choices)
        {
            table.AddColumn(new TableColumn(Markup.Escape(choice.Title)).RightAligned());
        }

        foreach ((string name, Func<ReplayRun, string> value) in Rows)
        {
            table.AddRow([name, .. runs.Select(value)]);
        }

        AnsiConsole.Write(table);
        for (int i = 0; i < runs.Count; i++)
        {
            AnsiConsole.WriteLine((runs.Count > 1 ? choices[i].Title + ": " : "") + Verdict.Of(runs[i]));
        }
    }

    /// <summary>Gets the figures of a replay: a name, and what makes the figure.</summary>
    public static IReadOnlyList<(string Name, Func<ReplayRun, string> Value)> Rows { get; } =
    [
        ("current begins at", run => run.BeganRunning ? "before it" : At(run.OnsetAt, "nobody can tell")),
        ("tool seen at", run => At(run.SeenAt, "never")),
        ("vacuum commanded at", run => At(run.VacuumAt, "never")),
        ("from current to command", run => Verdict.After(run.VacuumAt - run.OnsetAt) is var text && text == "never" ? "–" : text),
        ("tool last stopped at", run => At(run.StoppedAt, "never")),
        ("vacuum ran", run => $"{run.VacuumSeconds:0.00} s"),
        ("vacuum switched on", run => Verdict.Times(run.Starts)),
        ("let go while current flowed", run => Verdict.Times(run.Drops)),
        ("true rms while it runs, median", run => double.IsNaN(run.RunningAmperes) ? "–" : $"{run.RunningAmperes:0.00} A"),
        ("tool over stop-below, least", run => Ratio(run.LeastOverStop)),
        ("tool over start-at, median", run => Ratio(run.MedianOverStart)),
        ("start-at over quiet line, least", run => Ratio(run.StartOverQuiet)),
    ];

    private static void PrintTimeline(string title, IReadOnlyList<Entry> timeline, int most)
    {
        if (timeline.Count == 0)
        {
            return;
        }

        if (title.Length > 0)
        {
            AnsiConsole.WriteLine(title);
        }

        Table table = new Table().Border(TableBorder.None).AddColumn("s", c => c.RightAligned().NoWrap()).AddColumn("what");
        foreach (Entry entry in timeline.Take(most))
        {
            table.AddRow($"{entry.Time / 1e6:0.000}", Markup.Escape(entry.Text));
        }

        AnsiConsole.Write(table);
        if (timeline.Count > most)
        {
            AnsiConsole.WriteLine($"  … and {timeline.Count - most} lines more.");
        }

        AnsiConsole.WriteLine();
    }

    private static string At(double seconds, string otherwise) => double.IsNaN(seconds) ? otherwise : $"{seconds:0.000} s";

    private static string Ratio(double ratio) => double.IsNaN(ratio) ? "–" : $"{ratio:0.00} times";
}
