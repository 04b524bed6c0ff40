using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Report;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Pages;
using Spectre.Console;

namespace NanoDustSwitch.Inspector.Tune;

/// <summary>Says what was found: on the terminal, and as a page.</summary>
internal static class TuneReport
{
    private const string Lines = "For the board's console, in this order";

    private static readonly string[] s_header = ["recording", "of", "shows", "margin", "tried with the firmware"];

    /// <summary>Prints it.</summary>
    /// <param name="tuning">What was found.</param>
    public static void Print(Tuning tuning)
    {
        Table table = new Table().Border(TableBorder.Rounded).AddColumns(s_header);
        foreach (string[] row in Rows(tuning))
        {
            table.AddRow([.. row.Select(Markup.Escape)]);
        }

        AnsiConsole.Write(table);
        AnsiConsole.WriteLine(Sentence(tuning));
        if (tuning.IsGood)
        {
            AnsiConsole.WriteLine(Lines + ":");
            AnsiConsole.WriteLine();
            foreach (string line in tuning.Settings.Lines)
            {
                AnsiConsole.WriteLine("  " + line);
            }
        }
    }

    /// <summary>Makes the page.</summary>
    /// <param name="tuning">What was found.</param>
    /// <returns>The page.</returns>
    public static HtmlPage Page(Tuning tuning)
    {
        HtmlPage page = new("Levels from recordings");
        page.AddVerdict(Sentence(tuning), tuning.IsGood);
        page.AddTable(s_header, Rows(tuning), isText: true);
        if (tuning.IsGood)
        {
            page.AddHeading(Lines);
            page.AddLines(tuning.Settings.Lines);
        }

        foreach (TunedRecording recording in tuning.Recordings.Where(recording => recording.Check is not null))
        {
            page.AddHeading(recording.Source.Name);
            ReportPage.AddReplay(page, [new SettingChoice("tuned", recording.Check!.Settings)], [recording.Check]);
        }

        return page;
    }

    private static string Sentence(Tuning tuning)
    {
        TunedSettings settings = tuning.Settings;
        if (!settings.IsPossible)
        {
            string names = string.Join(", ", tuning.TooSmall.Select(recording => recording.Source.Name));
            return $"Too close to be told apart: {names}. A tool must show {TaughtLevels.ToolOverQuiet} times "
                + $"what the line shows at most without it, here {TaughtLevels.ToolOverQuiet * tuning.Quiet / 1000.0:0.00} A. "
                + "More turns of the tool's wire through the sensor lift it above the sensor's own noise.";
        }

        return tuning.IsGood
            ? $"With start-at {FirmwareText.Of(SettingId.StartAt, settings.StartAt)} and stop-below "
                + $"{FirmwareText.Of(SettingId.StopBelow, settings.StopBelow)} "
                + $"every recording has a margin of {tuning.Recordings.Min(one => one.Margin(settings)):0.0} times or more. A "
                + "tool that was not recorded and shows less than start-at is not seen."
            : "With these levels the switch does not do right by every recording: see the table. There are no settings to use.";
    }

    private static IEnumerable<string[]> Rows(Tuning tuning) => tuning.Recordings.Select(recording => new[]
    {
        recording.Source.Name,
        recording.IsQuiet ? "quiet line" : "tool",
        $"{(recording.IsQuiet ? "at most" : "at least")} {recording.Milliamperes / 1000.0:0.00} A",
        tuning.Settings.IsPossible ? $"{recording.Margin(tuning.Settings):0.0} times" : "–",
        recording.Check is { } run ? Tried(recording, run) : "–",
    });

    private static string Tried(TunedRecording recording, ReplayRun run) =>
        run.Faults.Any() ? string.Join(' ', run.Faults.Select(seen => Verdict.Fault(seen.Fault, seen.Figure)))
        : recording.IsQuiet ? (double.IsNaN(run.SeenAt) ? "nothing starts" : $"SEES A TOOL at {run.SeenAt:0.00} s")
        : double.IsNaN(run.SeenAt) ? "NOT SEEN"
        : run.Drops > 0 ? $"LET GO {run.Drops} times"
        : run.BeganRunning ? "never let go; it ran from the beginning on, so no start was tried"
        : double.IsNaN(run.OnsetAt) ? "seen, never let go"
        : $"seen after {Verdict.After(run.SeenAt - run.OnsetAt)}, never let go";
}
