using System.CommandLine;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>Runs a program's command line: the one place where bad input becomes a sentence and an exit code.</summary>
internal static class CommandRunner
{
    /// <summary>Runs it.</summary>
    /// <param name="root">The program's verbs.</param>
    /// <param name="args">What was typed.</param>
    /// <param name="output">Where help is shown; on the process's terminal where it is null.</param>
    /// <param name="errors">Where a sentence about bad input is shown; the same.</param>
    /// <returns>The exit code.</returns>
    public static int Run(RootCommand root, string[] args, TextWriter? output = null, TextWriter? errors = null)
    {
        errors ??= Console.Error;
        ParseResult parsed = root.Parse(args);
        try
        {
            return parsed.Errors.Count == 0
                ? parsed.Invoke(new InvocationConfiguration
                {
                    EnableDefaultExceptionHandler = false, Output = output ?? Console.Out, Error = errors,
                })
                : throw new UserException($"{Problem(parsed)} '--help' shows what there is.");
        }
        catch (UserException exception)
        {
            errors.WriteLine(exception.Message);
            return ExitCode.Usage;
        }
    }

    // Where a verb is wanted, the library first says that there is none; what was typed instead is the better answer.
    private static string Problem(ParseResult parsed) => parsed.UnmatchedTokens is [var token, ..]
        ? $"Unrecognized command or argument '{token}'."
        : parsed.Errors[0].Message;
}
