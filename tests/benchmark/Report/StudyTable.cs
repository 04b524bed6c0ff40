using NanoDustSwitch.Simulator.Errors;
using Spectre.Console;

namespace NanoDustSwitch.Benchmarks.Report;

/// <summary>Shows studies' figures beside what they must be.</summary>
internal static class StudyTable
{
    /// <summary>Gets a console wider than most terminals: the tables are Markdown, and a broken line would be none.</summary>
    public static IAnsiConsole Wide { get; } = Make();

    /// <summary>Prints the table.</summary>
    /// <param name="rows">The figures.</param>
    /// <returns>The exit code: good when all are as they must be.</returns>
    public static int Print(IReadOnlyList<StudyRow> rows)
    {
        Table table = Tables.Start("Wanted", "", "trials", "found", "must", "aim", "");
        foreach (StudyRow row in rows)
        {
            table.AddRow(
                row.Name,
                $"{row.Count:#,0}",
                $"{row.Figure:0.###} {row.Unit}".Trim(),
                $"{row.Must:0.###}",
                $"{row.Aim:0.###}",
                row.IsAim ? "aim" : row.IsMet ? "must" : "MISSED");
        }

        Wide.Write(table);
        int missed = rows.Count(row => !row.IsMet);
        Wide.WriteLine(
            $"{rows.Count - missed} of {rows.Count} figures are as they must be, {rows.Count(row => row.IsAim)} as aimed at");
        return missed == 0 ? ExitCode.Good : ExitCode.Bad;
    }

    private static IAnsiConsole Make()
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No });
        console.Profile.Width = 400;
        return console;
    }
}
