using System.CommandLine;
using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Simulator.Replay;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>Puts a recording through the whole firmware.</summary>
internal static class ReplayCommand
{
    private const double LeastRate = 400;
    private const double GreatestRate = 20_000;
    private const double LongestLead = 3600;

    private static readonly Argument<string> s_file = new("FILE") { Description = "Rows of numbers, a row for each reading." };
    private static readonly Option<double> s_rate = new("--rate") { Description = "Readings a second, 400 to 20,000.", Required = true };
    private static readonly Option<int> s_column = new("--column") { Description = "Column to take, from 1.", DefaultValueFactory = _ => 1 };
    private static readonly Option<string> s_unit = new("--unit") { Description = "A, mA (both through the default sensor's model) or counts.", Required = true };
    private static readonly Option<double> s_lead = new("--lead") { Description = "Seconds of modelled idle before and after.", DefaultValueFactory = _ => 2 };
    private static readonly Option<double> s_scale = new("--scale") { Description = "Factor on every number before it is used.", DefaultValueFactory = _ => 1 };
    private static readonly Option<string?> s_chart = new("--chart") { Description = "Write a chart to this PNG file." };
    private static readonly Option<long> s_seed = new("--seed") { Description = "Seed of the noise.", DefaultValueFactory = _ => 1 };

    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Command command = new("replay", "Put a recording through the whole firmware: when the tool was seen, when the vacuum ran, by what margin.");
        command.Arguments.Add(s_file);
        command.Options.Add(s_rate);
        command.Options.Add(s_column);
        command.Options.Add(s_unit);
        command.Options.Add(s_lead);
        command.Options.Add(s_scale);
        command.Options.Add(s_chart);
        command.Options.Add(s_seed);
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        double rate = Within(parsed.GetValue(s_rate), LeastRate, GreatestRate, "--rate", "readings a second, as a bucket of 2.5 ms wants one at least");
        double lead = Within(parsed.GetValue(s_lead), 0, LongestLead, "--lead", "seconds");
        double scale = Within(parsed.GetValue(s_scale), -1e6, 1e6, "--scale", "as a factor");
        int column = (int)Within(parsed.GetValue(s_column), 1, 1000, "--column", "");
        RecordingUnit unit = Unit(parsed.GetRequiredValue(s_unit));
        string file = parsed.GetRequiredValue(s_file);
        double[] values = Recording.Read(file, column);
        double factor = scale * (unit == RecordingUnit.Milliamperes ? 0.001 : 1);
        for (int i = 0; i < values.Length; i++)
        {
            values[i] *= factor;
        }

        ReplayRun run = new(values, unit == RecordingUnit.Counts, rate, lead, parsed.GetValue(s_seed));
        AnsiConsole.Progress().AutoClear(true).Start(context =>
        {
            ProgressTask task = context.AddTask("replay", maxValue: 1);
            run.Run(part => task.Value = part);
        });
        Print(file, values.Length / rate, run);
        if (parsed.GetValue(s_chart) is { } chart)
        {
            DayChart.Save(chart, $"{Path.GetFileName(file)}, column {column}", run.Trace);
            Console.WriteLine($"chart: {chart}");
        }

        return run.IsGood ? ExitCode.Good : ExitCode.Bad;
    }

    private static void Print(string file, double seconds, ReplayRun run)
    {
        Table table = new Table().Border(TableBorder.Rounded)
            .AddColumn(new TableColumn(Markup.Escape(Path.GetFileName(file)))).AddColumn(new TableColumn($"{seconds:0.00} s").RightAligned());
        table.AddRow("tool seen after", Time(run.SeenAfter));
        table.AddRow("vacuum commanded after", Time(run.VacuumAfter));
        table.AddRow("stop seen after the end", Time(run.StoppedAfter));
        table.AddRow("vacuum ran", $"{run.VacuumSeconds:0.00} s");
        table.AddRow("taken as stopped while it ran", $"{run.Drops} times");
        table.AddRow("starts before it ran", $"{run.FalseStarts}");
        table.AddRow("swing over start level, median", $"{run.MedianOverStart:0.00} times");
        table.AddRow("swing over stop level, least", double.IsInfinity(run.LeastOverStop) ? "too short to tell" : $"{run.LeastOverStop:0.00} times");
        AnsiConsole.Write(table);
        Console.WriteLine(run.IsGood
            ? "Found, and never dropped."
            : double.IsNaN(run.SeenAfter) ? "Not found: it stays below the start level." : "Not as it should be: see the table.");
    }

    private static string Time(double seconds) => double.IsNaN(seconds) ? "never" : seconds < 1 ? $"{seconds * 1000:0.0} ms" : $"{seconds:0.00} s";

    private static double Within(double value, double least, double greatest, string option, string what) =>
        value >= least && value <= greatest
            ? value
            : throw new UserException($"{option} {value} is not allowed: {least:#,0} to {greatest:#,0} {what}".TrimEnd() + ".");

    private static RecordingUnit Unit(string text) => text.ToUpperInvariant() switch
    {
        "A" => RecordingUnit.Amperes,
        "MA" => RecordingUnit.Milliamperes,
        "COUNTS" => RecordingUnit.Counts,
        _ => throw new UserException($"--unit {text} is not known: A, mA or counts."),
    };
}
