using System.CommandLine;
using NanoDustSwitch.Simulator.Replay;
using NanoDustSwitch.Simulator.Report;
using NanoDustSwitch.Simulator.Tune;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>Finds settings from recordings of the quiet line and of each tool.</summary>
internal static class TuneCommand
{
    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Command command = new(
            "tune",
            "Settings from recordings: the quiet line with --idle, and a file for each tool. Finds the levels that tell them apart with the largest margin, "
            + "tries them on every recording with the very same core, and prints the lines for the board's console.");
        Argument<string[]> tools = new("FILE") { Description = "Recordings, one of each tool at its least load.", Arity = ArgumentArity.OneOrMore };
        Option<string[]> idle = new("--idle") { Description = "A recording of the line with all tools off; once more for another, for example with the vacuum on.", Required = true };
        Option<string?> report = new("--report") { Description = "Write a page about all of them to this HTML file." };
        TableOption table = new();
        command.Arguments.Add(tools);
        command.Options.Add(idle);
        command.Options.Add(report);
        table.AddTo(command);
        command.SetAction(parsed =>
        {
            ReplaySource[] quiet = [.. parsed.GetRequiredValue(idle).Select(file => SourceFile.Open(file, table.Of(parsed)))];
            ReplaySource[] sources = [.. parsed.GetRequiredValue(tools).Select(file => SourceFile.Open(file, table.Of(parsed)))];
            Tuning? tuning = null;
            Wait.For("tune", progress => tuning = Tuning.Of(quiet, sources, progress));
            TuneReport.Print(tuning!);
            if (parsed.GetValue(report) is { } html)
            {
                ReportFile.Save(html, TuneReport.Page(tuning!));
            }

            return tuning!.IsGood ? ExitCode.Good : ExitCode.Bad;
        });
        return command;
    }
}
