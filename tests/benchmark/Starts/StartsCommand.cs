using System.Diagnostics;
using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Simulator.Errors;
using Spectre.Console;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>Whether the vacuum waits for the end of the tools' start surges, and for how long.</summary>
internal static class StartsCommand
{
    private const int Groups = 480;
    private const int QuickGroups = 48;
    private const int OtherGroups = 120;

    /// <summary>Measures and prints.</summary>
    /// <param name="isQuick">Whether with fewer tools.</param>
    /// <returns>The exit code.</returns>
    public static int Run(bool isQuick)
    {
        Stopwatch watch = Stopwatch.StartNew();
        (StartStudy wanted, StartStudy others) = BenchProgress.Show(tell =>
        {
            Bench bench = new(isQuick, [], tell);
            int groups = isQuick ? QuickGroups : Groups;
            return (
                StartStudy.Run(bench, StartKinds.Wanted, groups),
                StartStudy.Run(bench, StartKinds.Others, isQuick ? QuickGroups : OtherGroups));
        });
        List<CountedGoal> goals = StartGoals.All(wanted);

        // Wider than most terminals: the tables are Markdown, and a broken line would be none.
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No });
        console.Profile.Width = 400;
        StartTables tables = new(console);
        tables.Print("Starts by kind of tool", wanted, StartKinds.Wanted);
        tables.Print("Others", others, StartKinds.Others);
        tables.Print(goals);
        int missed = goals.Count(one => !one.Goal.IsMet);
        console.WriteLine(
            $"{goals.Count - missed} of {goals.Count} figures are as they must be, {goals.Count(one => one.Goal.IsAim)} "
            + $"as aimed at; {watch.Elapsed.TotalSeconds:0} s");
        return missed == 0 ? ExitCode.Good : ExitCode.Bad;
    }
}
