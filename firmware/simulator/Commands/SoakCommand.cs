using System.CommandLine;
using System.Diagnostics;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Soak;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>Runs evening after evening of random work.</summary>
internal static class SoakCommand
{
    private const double MostHours = 100_000;
    private const int MostVerdicts = 20;

    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Option<double> hours = new("--hours")
        {
            Description = "Hours of shop time; a year of evenings is about 500.",
            DefaultValueFactory = _ => 500,
        };
        Option<long> seed = new("--seed")
        {
            Description = "Seed of the first evening; the others follow it.",
            DefaultValueFactory = _ => 1,
        };
        Command command = new(
            "soak",
            "Run evenings of random work in random shops at the board's pace, with lamps, noise, drift and mishaps, until so "
            + "many hours of shop time are over. Exit code 0: nothing missed, nothing false, at "
            + "most 2 % started in the surge, the vacuum always stopped, no unexpected fault, memory flat.")
        {
            hours, seed,
        };
        command.SetAction(parsed => Run(parsed.GetValue(hours), parsed.GetValue(seed)));
        return command;
    }

    private static int Run(double hours, long seed)
    {
        if (!(hours > 0 && hours <= MostHours))
        {
            throw new UserException($"--hours {hours} is not allowed: more than 0, at most {MostHours}.");
        }

        if (seed is < 0 or > int.MaxValue)
        {
            throw new UserException($"--seed {seed} is not allowed: 0 to {int.MaxValue}.");
        }

        Stopwatch watch = Stopwatch.StartNew();
        Progress progress = AnsiConsole.Progress().AutoClear(true).Columns(
            new TaskDescriptionColumn(),
            new ProgressBarColumn(),
            new PercentageColumn(),
            new ElapsedTimeColumn(),
            new RemainingTimeColumn());
        SoakRun run = progress.Start(context =>
        {
            ProgressTask task = context.AddTask($"{hours:0.#} h of evenings", maxValue: hours);
            return new SoakRun(seed, hours).Run(task.Increment);
        });
        Console.WriteLine(run.Sums.ToString());
        Console.WriteLine(run.Heap.CanTell
            ? $"managed heap after each evening: {run.Heap.First:0.0} MB in the first quarter, {run.Heap.Last:0.0} MB in the "
                + $"last, {(run.Heap.IsFlat ? "flat" : "GROWING")}"
            : "managed heap: too few evenings to tell");
        foreach (string verdict in run.Verdicts.Take(MostVerdicts))
        {
            Console.WriteLine(verdict);
        }

        Console.WriteLine($"took {watch.Elapsed.TotalMinutes:0.0} min on {Environment.ProcessorCount} cores");
        return run.IsGood ? ExitCode.Good : ExitCode.Bad;
    }
}
