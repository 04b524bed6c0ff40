using NanoDustSwitch.Benchmarks.Studies;
using Spectre.Console;

namespace NanoDustSwitch.Benchmarks;

/// <summary>What stands on the line beside tools: the table, and whether all is as it must be.</summary>
internal static class StandingCommand
{
    /// <summary>Measures and prints.</summary>
    /// <param name="isQuick">Whether with fewer trials.</param>
    /// <returns>The exit code.</returns>
    public static int Run(bool isQuick)
    {
        List<StandingRow> rows = StandingStudy.Run(new Bench(isQuick, [], (_, _) => { }));
        Table table = new() { Border = TableBorder.Markdown };
        table.AddColumns("", "trials", "found", "must", "aim", "");
        foreach (StandingRow row in rows)
        {
            table.AddRow(
                row.Name,
                $"{row.Count:#,0}",
                $"{row.Figure:0.###} {row.Unit}",
                $"{row.Must:0.###}",
                $"{row.Aim:0.###}",
                row.Figure <= row.Aim ? "aim" : row.IsOk ? "must" : "MISSED");
        }

        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No });
        console.Profile.Width = 400;
        console.Write(table);
        return rows.TrueForAll(row => row.IsOk) ? Simulator.Errors.ExitCode.Good : Simulator.Errors.ExitCode.Bad;
    }
}
