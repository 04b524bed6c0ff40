using System.CommandLine;
using System.CommandLine.Invocation;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
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
        foreach (VersionOption version in root.Options.OfType<VersionOption>())
        {
            version.Action = new VersionAction();
        }

        ParseResult parsed = root.Parse(args);
        try
        {
            return parsed.Errors.Count == 0
                ? parsed.Invoke(new InvocationConfiguration
                {
                    EnableDefaultExceptionHandler = false, Output = output ?? Console.Out, Error = errors,
                })
                : throw new UserException($"{Problem(root, parsed)} '--help' shows what there is.");
        }
        catch (UserException exception)
        {
            errors.WriteLine(exception.Message);
            return ExitCode.Usage;
        }
    }

    // Where a verb is wanted, the library first says that there is none; what was typed instead is the better answer.
    private static string Problem(RootCommand root, ParseResult parsed)
    {
        if (parsed.UnmatchedTokens is not [var token, ..])
        {
            // The library names the type of .NET that it wants, which helps nobody.
            string[] said = parsed.Errors[0].Message.Split(" as expected type");
            string wanted = said.Length < 2 ? ""
                : said[1].Contains("Int", StringComparison.Ordinal) ? "; it takes a whole number"
                : said[1].Contains("Double", StringComparison.Ordinal) ? "; it takes a number" : "";
            return $"{said[0].TrimEnd('.')}{wanted}.";
        }

        Command command = parsed.CommandResult.Command;
        string[] names = [.. command.Subcommands.Select(verb => verb.Name), .. command.Options.Select(option => option.Name)];
        string? meant = Array.Find(names, name => NearMiss.IsOneSlip(name, token))
            ?? Array.Find(names, name => name.StartsWith(token, StringComparison.Ordinal));
        return $"Unrecognized command or argument '{token}'." + (meant is null ? "" : $" Did you mean '{meant}'?");
    }

    private sealed class VersionAction : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            parseResult.InvocationConfiguration.Output.WriteLine(
                $"nanoDustSwitch {Name(parseResult)} {ProductVersion.Text}");
            return ExitCode.Good;
        }

        private static string Name(ParseResult parsed) => parsed.RootCommandResult.Command.Name.Split('.')[^1].ToLowerInvariant();
    }
}
