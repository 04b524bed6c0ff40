using System.Diagnostics;
using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Benchmarks.Studies;
using NanoDustSwitch.Simulator.Errors;
using Spectre.Console;

namespace NanoDustSwitch.Benchmarks;

/// <summary>
/// What is found of a current, how soon, and for how much work: ours, the common methods, and the best possible.
/// </summary>
internal static class DetectionCommand
{
    /// <summary>Measures, prints and draws.</summary>
    /// <param name="isQuick">Whether in seconds, with larger errors.</param>
    /// <param name="folder">Where the charts go.</param>
    /// <returns>The exit code.</returns>
    public static int Run(bool isQuick, string folder)
    {
        Stopwatch watch = Stopwatch.StartNew();
        double[] recording = RecordedResidual.Read();
        Findings found = BenchProgress.Show(tell => Findings.Run(new Bench(isQuick, recording, tell)));
        List<Goal> goals = Goals.All(found);

        // Wider than most terminals: the tables are Markdown, and a broken line would be none.
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No });
        console.Profile.Width = 400;
        new Tables(console).Print(found, goals);
        foreach (string file in Charts.Save(folder, found))
        {
            console.WriteLine($"chart: {file}");
        }

        int missed = goals.Count(goal => !goal.IsMet);
        console.WriteLine(
            $"{goals.Count - missed} of {goals.Count} figures are as they must be, {goals.Count(goal => goal.IsAim)} "
            + $"as aimed at; {watch.Elapsed.TotalSeconds:0} s{(isQuick ? ", quick: errors of several percent" : "")}");
        return missed == 0 ? ExitCode.Good : ExitCode.Bad;
    }
}
