using System.CommandLine;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>Runs a program's command line: the one place where bad input becomes a sentence and an exit code.</summary>
internal static class CommandRunner
{
    /// <summary>Runs it.</summary>
    /// <param name="root">The program's verbs.</param>
    /// <param name="args">What was typed.</param>
    /// <returns>The exit code.</returns>
    public static int Run(RootCommand root, string[] args)
    {
        ParseResult parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            return Refuse(parsed.Errors[0].Message + " '--help' shows what there is.");
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (UserException exception)
        {
            return Refuse(exception.Message);
        }
    }

    /// <summary>Says why the input cannot be used.</summary>
    /// <param name="sentence">One sentence.</param>
    /// <returns>The exit code.</returns>
    public static int Refuse(string sentence)
    {
        Console.Error.WriteLine(sentence);
        return ExitCode.Usage;
    }
}
