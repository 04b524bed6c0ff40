using System.CommandLine;
using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>The program's verbs.</summary>
internal static class CommandLine
{
    // These moved out of this program; whoever still types one here is told where it went.
    private static readonly string[] s_inspector = ["watch", "record", "backup", "restore", "replay", "tune"];

    /// <summary>Runs the program.</summary>
    /// <param name="args">What was typed.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args)
    {
        RootCommand root = new(
            "The dust switch's firmware in a virtual shop. Without a verb: the demo day. "
            + "Exit code 0: all well; 1: a start was missed or false; 2: the input cannot be used.")
        {
            DayCommand.Create(), LiveCommand.Create(), ServeCommand.Create(), SoakCommand.Create(),
        };
        DayCommand.AddDemo(root);
        return args.FirstOrDefault() is { } verb && s_inspector.Contains(verb)
            ? CommandRunner.Refuse($"'{verb}' is a verb of the inspector: dotnet run --project firmware/inspector -- {verb}.")
            : CommandRunner.Run(root, args);
    }
}
