using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Simulator.Days;
using Spectre.Console;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>What came of the starts, as tables.</summary>
/// <param name="console">Where to.</param>
internal sealed class StartTables(IAnsiConsole console)
{
    /// <summary>Prints what came of some kinds.</summary>
    /// <param name="title">Title of the table.</param>
    /// <param name="found">What came of them.</param>
    /// <param name="kinds">The kinds.</param>
    public void Print(string title, StartStudy found, IEnumerable<StartKind> kinds)
    {
        Table table = Tables.Start(
            title, "", "first starts", "> 1.5 x, %", "> 1.1 x, %", "after near, s, median / 95 %",
            "after onset, s, median / 95 %",
            "later starts", "> 1.5 x, %", "> 1.1 x, %", "after near, s, median / 95 %", "after onset, s, median / 80 %");
        foreach (StartKind kind in kinds)
        {
            AddRow(table, found, kind.Name);
            for (int pace = 0; pace < StartStudy.Paces.Length; pace++)
            {
                AddRow(table, found, StartStudy.Key(kind.Name, pace));
            }
        }

        console.Write(table);
    }

    /// <summary>Prints what was wanted, and what came out.</summary>
    /// <param name="goals">The figures.</param>
    public void Print(IReadOnlyList<CountedGoal> goals)
    {
        Table table = Tables.Start("Wanted", "", "n", "found", "must", "aim", "");
        foreach ((int count, Goal goal) in goals)
        {
            table.AddRow(
                goal.Name,
                $"{count:#,0}",
                Tables.Format(goal.Value, goal.Format),
                Tables.Format(goal.Must, goal.Format),
                Tables.Format(goal.Aim, goal.Format),
                goal.Verdict);
        }

        console.Write(table);
    }

    private static void AddRow(Table table, StartStudy found, string kind) => table.AddRow(
        [kind, .. Cells(found, kind, true, 0.95), .. Cells(found, kind, false, 0.8)]);

    private static string[] Cells(StartStudy found, string kind, bool isFirst, double part) =>
    [
        $"{found.Count(kind, isFirst):#,0}",
        $"{found.Above(kind, isFirst, SurgeTruth.Inside):0.0}",
        $"{found.Above(kind, isFirst, SurgeTruth.Near):0.0}",
        $"{found.AfterNear([kind], isFirst, 0.5):0.00} / {found.AfterNear([kind], isFirst, 0.95):0.00}",
        $"{found.Delay(kind, isFirst, 0.5):0.00} / {found.Delay(kind, isFirst, part):0.00}",
    ];
}
