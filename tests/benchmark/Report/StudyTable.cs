using NanoDustSwitch.Simulator.Errors;
using Spectre.Console;

namespace NanoDustSwitch.Benchmarks.Report;

/// <summary>Shows a study's figures beside what they must be.</summary>
internal static class StudyTable
{
    /// <summary>Prints the table.</summary>
    /// <param name="rows">The figures.</param>
    /// <returns>The exit code: good when all are as they must be.</returns>
    public static int Print(IReadOnlyList<StudyRow> rows)
    {
        Table table = new() { Border = TableBorder.Markdown };
        table.AddColumns("", "trials", "found", "must", "aim", "");
        foreach (StudyRow row in rows)
        {
            table.AddRow(
                row.Name,
                $"{row.Count:#,0}",
                $"{row.Figure:0.###} {row.Unit}",
                $"{row.Must:0.###}",
                $"{row.Aim:0.###}",
                row.Figure <= row.Aim ? "aim" : row.IsMet ? "must" : "MISSED");
        }

        // Wider than most terminals: the table is Markdown, and a broken line would be none.
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No });
        console.Profile.Width = 400;
        console.Write(table);
        return rows.All(row => row.IsMet) ? ExitCode.Good : ExitCode.Bad;
    }
}
