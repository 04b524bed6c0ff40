using System.CommandLine;
using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>The program's verbs.</summary>
internal static class CommandLine
{
    /// <summary>Runs the program.</summary>
    /// <param name="args">What was typed.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args)
    {
        RootCommand root = new(
            "Looks into a dust switch's board over its serial port, and into recordings. "
            + "Exit code 0: all well; 1: a tool was missed, let go or falsely seen; 2: the input or the board cannot be used.")
        {
            WatchCommand.Create(),
            RecordCommand.Create(),
            BackupCommand.CreateBackup(),
            BackupCommand.CreateRestore(),
            FriendCommands.CreateCollect(),
            FriendCommands.CreateLook(),
            ReplayCommand.Create(),
            TuneCommand.Create(),
        };
        return CommandRunner.Run(root, args);
    }
}
