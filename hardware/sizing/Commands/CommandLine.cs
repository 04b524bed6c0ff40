using System.CommandLine;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Pages;
using NanoDustSwitch.Simulator.Terminal;
using NanoDustSwitch.Sizing.Building;
using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Pages;
using NanoDustSwitch.Sizing.Trials;
using Spectre.Console;

namespace NanoDustSwitch.Sizing.Commands;

/// <summary>The program.</summary>
internal static class CommandLine
{
    /// <summary>Exit code where a part must be added that the drawings have only for such cases.</summary>
    public const int FitsIfAdded = 3;

    /// <summary>Runs the program on the process's terminal.</summary>
    /// <param name="args">What was typed.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args) => Run(args, AnsiConsole.Console, Console.Out, Console.Error);

    /// <summary>Runs the program.</summary>
    /// <param name="args">What was typed.</param>
    /// <param name="console">Where the judgement is shown.</param>
    /// <param name="output">Where help is shown.</param>
    /// <param name="errors">Where a sentence about bad input is shown.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args, IAnsiConsole console, TextWriter output, TextWriter errors)
    {
        RootCommand root = new(
            "Judges whether vacuum, tool, circuit, cords, relay, sensor and box of a dust switch go together, "
            + "with the working shown. Local codes and licensed practice come first. "
            + "Exit code 0: fits, on the conditions that it prints; 1: does not fit as given; 2: the input cannot be used; "
            + "3: fits if you add the part that it names.");
        SizingOptions options = new();
        options.AddTo(root);
        HelpExamples.AddTo(root);
        root.SetAction(parsed => Judge(parsed, options, console));
        return CommandRunner.Run(root, args, output, errors);
    }

    private static int Judge(ParseResult parsed, SizingOptions options, IAnsiConsole console)
    {
        TrialBook trials = new();
        Advice advice = new(new Judgement(options.Order(parsed), trials), trials);
        if (options.Report(parsed) is { } file)
        {
            NamedFile.Write(file, JudgementPage.Of(advice, trials).ToString(), "--report ");
        }

        if (options.Build(parsed) is { } folder)
        {
            BuildFolder.Save(folder, advice);
        }

        TextPage.Write(console, advice);
        if (options.Build(parsed) is not null && advice.Outcome == Outcome.Fails)
        {
            console.WriteLine();
            console.WriteLine("No folder was written: what does not fit is not to be built.");
        }

        return advice.Fits ? ExitCode.Good : advice.Outcome == Outcome.Add ? FitsIfAdded : ExitCode.Bad;
    }
}
