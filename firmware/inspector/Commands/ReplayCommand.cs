using System.CommandLine;
using NanoDustSwitch.Inspector.Charts;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Report;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Pages;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>Lets the core decide again on a recording, with the settings it was made with and with others.</summary>
internal static class ReplayCommand
{
    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Argument<string> file = new("FILE") { Description = "The recording." };
        Option<string[]> set = new("--set")
        {
            Description = "A setting to try, for example start-at=300mA; once more for another value beside it.",
            DefaultValueFactory = _ => [],
        };
        Option<string?> chart = new("--chart") { Description = "Write a chart to this PNG file." };
        Option<string?> report = new("--report")
        {
            Description = "Write a page with a cycle, the spectrum and the swing to this HTML file.",
        };
        TableOption table = new();
        Command command = new(
            "replay",
            "What the switch makes of a recording, by the very same firmware: when the tool is seen, when the vacuum starts, by "
            + "what margin; and what it would make of it with other settings. Takes a board's recording, or any table of "
            + "readings: a column of seconds and one of counts or amperes, or a column alone with --rate.")
        {
            file, set, chart, report,
        };
        table.AddTo(command);
        command.SetAction(parsed =>
        {
            ReplaySource source = table.Open(parsed, parsed.GetRequiredValue(file))[0];
            IReadOnlyList<SettingChoice> choices = SettingChoice.Of(source, parsed.GetRequiredValue(set));
            List<ReplayRun> runs = Run(source, choices);
            ReplayReport.Print(choices, runs);
            if (parsed.GetValue(chart) is { } png)
            {
                ReplayChart.Save(png, choices, runs);
                Console.WriteLine($"chart: {png}");
            }

            if (parsed.GetValue(report) is { } html)
            {
                NamedFile.Write(html, ReportPage.Of(choices, runs).ToString(), "--report ");
                Console.WriteLine($"report: {html}");
            }

            return runs[^1].IsGood ? ExitCode.Good : ExitCode.Bad;
        });
        return command;
    }

    private static List<ReplayRun> Run(ReplaySource source, IReadOnlyList<SettingChoice> choices)
    {
        List<ReplayRun> runs = [];
        Wait.For("replay", progress =>
        {
            foreach (SettingChoice choice in choices)
            {
                int done = runs.Count;
                runs.Add(new ReplayRun(source, choice.Values).Run(part => progress((done + part) / choices.Count)));
            }
        });
        return runs;
    }
}
