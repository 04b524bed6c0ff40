using System.CommandLine;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>A board's settings into a file, and from a file into a board.</summary>
internal static class BackupCommand
{
    /// <summary>Makes the verb that reads a board.</summary>
    /// <returns>The command.</returns>
    public static Command CreateBackup()
    {
        Argument<string> file = new("FILE") { Description = "Where they go; an older backup is written over." };
        Option<string> port = PortOption.Create();
        Command command = new("backup", "Write a board's settings and known tools into a file that a person can read.")
        {
            file, port,
        };
        command.SetAction(parsed => Backup(parsed.GetRequiredValue(port), parsed.GetRequiredValue(file)));
        return command;
    }

    /// <summary>Makes the verb that changes a board.</summary>
    /// <returns>The command.</returns>
    public static Command CreateRestore()
    {
        Argument<string> file = new("FILE") { Description = "The backup." };
        Option<string> port = PortOption.Create();
        Command command = new(
            "restore",
            "Put a backup's settings and tools into a board and save them. The file is checked before anything is sent, and "
            + "what the board has is read back. Meanwhile the vacuum is held off; not while it runs.")
        {
            file, port,
        };
        command.SetAction(parsed => Restore(parsed.GetRequiredValue(port), parsed.GetRequiredValue(file)));
        return command;
    }

    /// <summary>Puts settings into a board, saves them, and says what has changed.</summary>
    /// <param name="console">The board's console.</param>
    /// <param name="wanted">All settings as they shall be.</param>
    public static void Put(BoardConsole console, SettingsDraft wanted)
    {
        IReadOnlyList<string> changes = new BoardSettings(console).Change(wanted);
        foreach (string change in changes)
        {
            Console.WriteLine(change);
        }

        Console.WriteLine(changes.Count == 0
            ? $"The board at {console.Name} has these settings already; they are saved."
            : $"{changes.Count} settings changed, read back and saved at {console.Name}.");
    }

    private static int Backup(string port, string path)
    {
        using BoardConsole console = BoardConsole.Connect(port);
        (SettingsDraft values, int unsaved) = new BoardSettings(console).Read();
        string[] tools = ToolLines.Read(console);
        SettingsFile.Write(path, values, tools, port);
        Console.WriteLine(
            $"{path}: {SettingsTable.Count} settings, {tools.Length} lines of tools"
            + $"{(unsaved > 0 ? $", {unsaved} of them in use but not saved on the board" : "")}.");
        return ExitCode.Good;
    }

    private static int Restore(string port, string path)
    {
        (SettingsDraft wanted, string[] tools) = SettingsFile.Read(path);
        using BoardConsole console = BoardConsole.Connect(port);
        Put(console, wanted);
        ToolLines.Put(console, tools);
        return ExitCode.Good;
    }
}
