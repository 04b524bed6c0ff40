using NanoDustSwitch.Simulator.Errors;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Runs a day with many seeds and prints the sums, with the bound that so many starts allow.</summary>
internal static class DaySeries
{
    /// <summary>Runs and prints.</summary>
    /// <param name="day">The day.</param>
    /// <param name="firstSeed">The first seed; the others follow it.</param>
    /// <param name="seeds">How many.</param>
    /// <returns>The exit code.</returns>
    public static int Run(Day day, long firstSeed, int seeds)
    {
        SeriesSums sums = AnsiConsole.Progress().AutoClear(true).Start(context =>
        {
            ProgressTask task = context.AddTask($"{seeds} seeds of {Markup.Escape(day.Name)}", maxValue: seeds);
            return Sum(day, firstSeed, seeds, () => task.Increment(1));
        });
        AnsiConsole.MarkupLineInterpolated($"[bold]{day.Name}[/], seeds {firstSeed} to {firstSeed + seeds - 1}");
        Console.WriteLine(sums.ToString());
        return sums.IsGood ? ExitCode.Good : ExitCode.Bad;
    }

    /// <summary>Runs the seeds on all cores; the sums are the same in whatever order they end.</summary>
    /// <param name="day">The day.</param>
    /// <param name="firstSeed">The first seed; the others follow it.</param>
    /// <param name="seeds">How many.</param>
    /// <param name="onRun">Called after each run, from any thread.</param>
    /// <returns>The sums.</returns>
    public static SeriesSums Sum(Day day, long firstSeed, int seeds, Action onRun)
    {
        SeriesSums sums = new();
        sums.Add(AllCores.Run(seeds, i =>
        {
            DayResult result = new DayRun(day, firstSeed + i, isTraced: false).Run().Result;
            onRun();
            return result;
        }));
        return sums;
    }
}
