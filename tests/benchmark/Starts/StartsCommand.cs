using System.Diagnostics;
using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Benchmarks.Studies;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>
/// Whether the vacuum waits for the end of the tools' start surges, and for how long; and what else the detector must tell from a
/// tool's start.
/// </summary>
internal static class StartsCommand
{
    private const int Groups = 480;
    private const int QuickGroups = 48;
    private const int OtherGroups = 120;

    /// <summary>Measures and prints everything.</summary>
    /// <param name="isQuick">Whether with fewer tools.</param>
    /// <param name="seed">The seed of all chance.</param>
    /// <param name="folder">Where the chart goes.</param>
    /// <returns>The exit code.</returns>
    public static int Run(bool isQuick, int seed, string folder)
    {
        Stopwatch watch = Stopwatch.StartNew();
        StartChart.Save(Path.Combine(folder, "starts.png"), StartKinds.Drawn, seed);
        List<StudyRow> rows = BenchProgress.Show(tell =>
        {
            Bench bench = new(isQuick, [], tell, seed);
            StartStudy wanted = StartStudy.Run(bench, StartKinds.Wanted, isQuick ? QuickGroups : Groups);
            StartStudy others = StartStudy.Run(bench, StartKinds.Others, isQuick ? QuickGroups : OtherGroups);
            StartTables tables = new(StudyTable.Wide);
            tables.Print("Starts by kind of tool", wanted, StartKinds.Wanted);
            tables.Print("Others", others, StartKinds.Others);
            return (List<StudyRow>)[.. StartGoals.All(wanted), .. StandingStudy.Run(bench), .. OwnCurrentStudy.Run(bench)];
        });
        int code = StudyTable.Print(rows);
        StudyTable.Wide.Profile.Out.Writer.WriteLine($"seed {seed}, {watch.Elapsed.TotalSeconds:0} s");
        return code;
    }
}
