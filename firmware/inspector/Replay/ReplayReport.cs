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
        if (runs.Count == 1 && runs[0].Timeline.Count > 0)
        {
            PrintTimeline(runs[0].Timeline);
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
        ("drop-outs while current flowed", run => Verdict.Times(run.Drops)),
        ("tool over stop level, least", run => Ratio(run.LeastOverStop)),
        ("tool over start level, median", run => Ratio(run.MedianOverStart)),
        ("start level over quiet line, least", run => Ratio(run.StartOverQuiet)),
    ];

    private static void PrintTimeline(IReadOnlyList<Entry> timeline)
    {
        AnsiConsole.Write(DayReport.Timeline([.. timeline.Take(LongestTimeline)]));
        if (timeline.Count > LongestTimeline)
        {
            AnsiConsole.WriteLine($"  … and {timeline.Count - LongestTimeline} lines more.");
        }

        AnsiConsole.WriteLine();
    }

    private static string At(double seconds, string otherwise) => double.IsNaN(seconds) ? otherwise : $"{seconds:0.000} s";

    private static string Ratio(double ratio) => double.IsNaN(ratio) ? "–" : $"{ratio:0.00} times";
}
