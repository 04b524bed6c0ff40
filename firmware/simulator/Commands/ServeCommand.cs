using System.CommandLine;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Live.Serve;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>The board's console on a pseudo-terminal.</summary>
internal static class ServeCommand
{
    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Command command = new(
            "serve",
            "The board's console in real time on a pseudo-terminal, for any terminal program or your own; "
            + "lines that begin with / work the shop from here. Linux and macOS.");
        LiveOptions options = new();
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            ServeSession.Run(options.Shop(parsed), !Console.IsInputRedirected);
            return ExitCode.Good;
        });
        return command;
    }
}
