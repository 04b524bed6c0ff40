using System.CommandLine;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>The program's verbs.</summary>
internal static class CommandLine
{
    /// <summary>Runs the program.</summary>
    /// <param name="args">What was typed.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args)
    {
        // Whoever still types here what moved out of this program is told where it went.
        if (args is ["watch" or "record" or "backup" or "restore" or "replay" or "tune", ..])
        {
            Console.Error.WriteLine(
                $"'{args[0]}' is a verb of the inspector: dotnet run --project firmware/inspector -- {args[0]}");
            return ExitCode.Usage;
        }

        RootCommand root = new(
            "The dust switch's firmware in a virtual shop. Without a verb: the demo day. "
            + "Exit code 0: all well; 1: a start was missed or false; 2: the input cannot be used.")
        {
            DayCommand.Create(), LiveCommand.Create(), ServeCommand.Create(), SoakCommand.Create(),
        };
        DayCommand.AddDemo(root);
        return CommandRunner.Run(root, args);
    }
}
