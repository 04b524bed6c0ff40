using System.CommandLine;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>The program's verbs, and the one place where bad input becomes a sentence and an exit code.</summary>
internal static class CommandLine
{
    /// <summary>Runs the program.</summary>
    /// <param name="args">What was typed.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args)
    {
        RootCommand root = new(
            "The dust switch's firmware in a virtual shop. Without a verb: the demo day. "
            + "Exit code 0: all well; 1: a start was missed or false; 2: the input cannot be used.");
        DayCommand.AddDemo(root);
        root.Subcommands.Add(DayCommand.Create());
        root.Subcommands.Add(LiveCommand.Create());
        root.Subcommands.Add(ServeCommand.Create());
        root.Subcommands.Add(ReplayCommand.Create());
        root.Subcommands.Add(TuneCommand.Create());
        root.Subcommands.Add(WatchCommand.Create());
        root.Subcommands.Add(RecordCommand.Create());
        root.Subcommands.Add(BackupCommand.CreateBackup());
        root.Subcommands.Add(BackupCommand.CreateRestore());
        root.Subcommands.Add(SoakCommand.Create());

        ParseResult parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            Complain(parsed.Errors[0].Message + " '--help' shows what there is.");
            return ExitCode.Usage;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (UserException exception)
        {
            Complain(exception.Message);
            return ExitCode.Usage;
        }
    }

    private static void Complain(string sentence) => Console.Error.WriteLine(sentence);
}
