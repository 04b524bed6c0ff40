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

    private static void AddRow(Table table, StartStudy found, string kind) => table.AddRow(
        [kind, .. Cells(found, kind, Which.First, 0.95), .. Cells(found, kind, Which.Later, 0.8)]);

    private static string[] Cells(StartStudy found, string kind, Which which, double part) =>
    [
        $"{found.Count(kind, which):#,0}",
        $"{found.Above(kind, which, SurgeTruth.Inside):0.0}",
        $"{found.Above(kind, which, SurgeTruth.Near):0.0}",
        $"{found.AfterNear([kind], which, 0.5):0.00} / {found.AfterNear([kind], which, 0.95):0.00}",
        $"{found.Delay(kind, which, 0.5):0.00} / {found.Delay(kind, which, part):0.00}",
    ];
}
