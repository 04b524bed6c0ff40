using NanoDustSwitch.Simulator.Commands;
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
        SeriesSums sums = new(day);
        AnsiConsole.Progress().AutoClear(true).Start(context =>
        {
            ProgressTask task = context.AddTask($"{seeds} seeds of {Markup.Escape(day.Name)}", maxValue: seeds);
            for (int i = 0; i < seeds; i++)
            {
                sums.Add(new DayRun(day, firstSeed + i, isTraced: false).Run());
                task.Increment(1);
            }
        });
        AnsiConsole.MarkupLineInterpolated($"[bold]{day.Name}[/], seeds {firstSeed} to {firstSeed + seeds - 1}");
        Console.WriteLine(sums.ToString());
        return sums.Missed + sums.False == 0 ? ExitCode.Good : ExitCode.Bad;
    }
}
