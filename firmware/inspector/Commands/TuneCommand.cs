using System.CommandLine;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Tune;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Pages;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>Finds settings from recordings of the quiet line and of each tool.</summary>
internal static class TuneCommand
{
    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Argument<string[]> tools = new("FILE")
        {
            Description = "Recordings, one of each tool at its least load.",
            Arity = ArgumentArity.OneOrMore,
        };
        Option<string[]> idle = new("--idle")
        {
            Description = "A recording of the line with all tools off; once more for another, for example with the vacuum on.",
            Required = true,
        };
        Option<string?> report = new("--report") { Description = "Write a page about all of them to this HTML file." };
        Option<string?> port = new("--port")
        {
            Description = "The board's serial port: the settings are sent to it after a yes, read back and saved.",
        };
        TableOption table = new();
        Command command = new(
            "tune",
            "Settings from recordings: the quiet line with --idle, and a file for each tool. Finds the levels with the most room "
            + "to either side, tries them on every recording with the very same firmware, and prints them as lines to type; "
            + "with --port they are sent to a board after a yes.")
        {
            tools, idle, report, port,
        };
        table.AddTo(command);
        command.SetAction(parsed =>
        {
            ReplaySource[] quiet = table.Open(parsed, parsed.GetRequiredValue(idle));
            ReplaySource[] sources = table.Open(parsed, parsed.GetRequiredValue(tools));
            Tuning? tuning = null;
            Wait.For("tune", progress => tuning = Tuning.Of(quiet, sources, progress));
            TuneReport.Print(tuning!);
            if (parsed.GetValue(report) is { } html)
            {
                NamedFile.Write(html, TuneReport.Page(tuning!).ToString(), "--report ");
                Console.WriteLine($"report: {html}");
            }

            if (parsed.GetValue(port) is { } name && tuning!.IsGood)
            {
                Send(name, tuning.Settings);
            }

            return tuning!.IsGood ? ExitCode.Good : ExitCode.Bad;
        });
        return command;
    }

    // Nothing but a yes is one.
    private static void Send(string port, TunedSettings settings)
    {
        using BoardConsole console = BoardConsole.Connect(port);
        Console.Write($"Set and save these at {port}? (yes or no) ");
        if (Console.ReadLine()?.Trim().Equals("yes", StringComparison.OrdinalIgnoreCase) == true)
        {
            SettingsDraft wanted = new BoardSettings(console).Read().Values;
            settings.PutInto(wanted);
            BackupCommand.Put(console, wanted);
        }
        else
        {
            Console.WriteLine("Nothing was sent.");
        }
    }
}
