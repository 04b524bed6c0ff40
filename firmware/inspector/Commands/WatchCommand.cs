using System.CommandLine;
using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>A board at work, on this terminal or as lines for a program.</summary>
internal static class WatchCommand
{
    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Option<string> port = PortOption.Create();
        Command command = new(
            "watch",
            "What a board sees and does, ten times a second: a picture on a terminal of 80 by 24 or more (q leaves), else CSV "
            + "lines until Ctrl-C. A board that is unplugged is waited for.")
        {
            port,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(port)));
        return command;
    }

    private static int Run(string name)
    {
        if (Console.IsOutputRedirected || !FullScreen.Fits(AnsiConsole.Console))
        {
            if (!Console.IsOutputRedirected)
            {
                Console.Error.WriteLine(
                    $"The picture needs a terminal of {FullScreen.LeastWidth} by {FullScreen.LeastHeight}; this one has "
                    + $"{AnsiConsole.Profile.Width} by {AnsiConsole.Profile.Height}, so here are the lines for a spreadsheet. "
                    + "Ctrl-C ends them.");
            }

            CsvWatch.Run(name);
            return ExitCode.Good;
        }

        try
        {
            WatchSession.Run(name, AnsiConsole.Console);
        }
        catch (IOException)
        {
            // The terminal was closed, and with it the only one who would read more about it.
        }

        return ExitCode.Good;
    }
}
