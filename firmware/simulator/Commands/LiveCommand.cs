using System.CommandLine;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;

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
            "The board's console on this terminal, in real time; lines that begin with / work the shop around it. "
            + "When the input is no terminal, in virtual time to the end of the input.");
        Option<string?> settings = new("--settings") { Description = "File that stands for the board's flash; without it everything is forgotten." };
        command.Options.Add(settings);
        command.SetAction(parsed => Run(parsed.GetValue(settings)));
        return command;
    }

    private static int Run(string? settings)
    {
        LiveShop live = new(settings is null ? FlashImage.Blank() : FlashImage.Open(settings));
        if (Console.IsInputRedirected)
        {
            PipedSession.Run(live, Console.In, Console.Out);
        }
        else
        {
            TerminalSession.Run(live);
        }

        return ExitCode.Good;
    }
}
