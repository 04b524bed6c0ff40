using System.CommandLine;
using System.Text.Json;
using NanoDustSwitch.Drawing.Netlists;
using NanoDustSwitch.Drawing.Sheets;

namespace NanoDustSwitch.Drawing;

/// <summary>Draws netlists, each as an SVG file beside it.</summary>
internal static class Program
{
    private const int Good = 0;
    private const int Usage = 2;

    /// <summary>Runs the program.</summary>
    /// <param name="args">What was typed.</param>
    /// <param name="root">The repository, whose netlists are drawn where none is named; empty for the current folder.</param>
    /// <param name="output">Where help and the written files are listed.</param>
    /// <param name="errors">Where a sentence about bad input is shown.</param>
    /// <returns>The exit code: 0, or 2 where the input cannot be used; then no file was written.</returns>
    public static int Run(string[] args, string root, TextWriter output, TextWriter errors)
    {
        Argument<string[]> named = new("netlist")
        {
            Description = "Netlists (.json) to draw; without any, hardware/wiring/*.json.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        RootCommand command = new(
            "Draws netlists, each as an SVG file beside it. Exit code 0: drawn; 2: the input cannot be used.") { named };
        command.SetAction(parsed =>
        {
            string[] files = parsed.GetRequiredValue(named) is { Length: > 0 } some ? some : Build.FilesBelow(root);
            (string File, string Drawing)[] drawn = [.. files.SelectMany(Draw)];
            foreach ((string file, string drawing) in drawn)
            {
                File.WriteAllText(file, drawing);
                output.WriteLine(file);
            }

            return Good;
        });

        ParseResult parsed = command.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            errors.WriteLine(parsed.Errors[0].Message + " '--help' shows what there is.");
            return Usage;
        }

        try
        {
            return parsed.Invoke(
                new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = output, Error = errors });
        }
        catch (Exception exception) when (exception is InvalidDataException or IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(exception.Message);
            return Usage;
        }
    }

    private static int Main(string[] args) => Run(args, "", Console.Out, Console.Error);

    private static IEnumerable<(string File, string Drawing)> Draw(string file)
    {
        try
        {
            return [.. Build.SheetsOf(file).Select(sheet => (sheet.File, new Sheet(sheet.Build).Draw()))];
        }
        catch (Exception exception) when (exception is InvalidDataException or JsonException or ArgumentException)
        {
            throw new InvalidDataException($"{file}: {exception.Message}", exception);
        }
    }
}
