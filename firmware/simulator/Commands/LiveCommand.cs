using System.CommandLine;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Live;
using NanoDustSwitch.Simulator.Live.Picture;
using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>The board's console on this terminal.</summary>
internal static class LiveCommand
{
    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Command command = new(
            "live",
            "The board's console on this terminal, in real time, below a picture of shop and switch where there is room for one "
            + "(80 by 24); lines that begin with / work the shop. When the input is no terminal, in virtual time to the end of "
            + "the input.");
        LiveOptions options = new();
        options.AddTo(command);
        command.SetAction(parsed => Run(options.Shop(parsed)));
        return command;
    }

    private static int Run(LiveShop live)
    {
        if (Console.IsInputRedirected)
        {
            PipedSession.Run(live, Console.In, Console.Out);
            return ExitCode.Good;
        }

        try
        {
            RunAtTerminal(live);
        }
        catch (IOException)
        {
            // The terminal was closed, and with it the only one who would read more about it.
        }

        return ExitCode.Good;
    }

    private static void RunAtTerminal(LiveShop live)
    {
        if (!Console.IsOutputRedirected && FullScreen.Fits(AnsiConsole.Console))
        {
            PictureSession.Run(live, AnsiConsole.Console);
        }
        else
        {
            TerminalSession.Run(live, isColoured: !Console.IsOutputRedirected && AnsiConsole.Profile.Capabilities.Ansi);
        }
    }
}
