using System.CommandLine;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>Runs a day: the demo day without a verb, any file with <c>day</c>.</summary>
internal static class DayCommand
{
    private const string DemoChart = "out/day.png";

    /// <summary>Lets the root command run the demo day.</summary>
    /// <param name="root">The root command.</param>
    public static void AddDemo(RootCommand root)
    {
        Options options = new();
        options.AddTo(root);
        root.SetAction(parsed => Run(DayFile.Demo(), parsed, options, DemoChart));
    }

    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Argument<string> file = new("FILE") { Description = "The day." };
        Command command = new(
            "day", "Run a day from a JSON file; comments are allowed, firmware/simulator/Days/demo-day.json is an example.")
        {
            file,
        };
        Options options = new();
        options.AddTo(command);
        command.SetAction(parsed => Run(DayFile.Read(parsed.GetRequiredValue(file)), parsed, options, null));
        return command;
    }

    private static int Run(Day day, ParseResult parsed, Options options, string? defaultChart)
    {
        day.Pace = parsed.GetValue(options.Pace) switch
        {
            null => day.Pace,
            "esp32" => Pace.Esp32(),
            "ideal" => day.Pace.Costs is null ? day.Pace : Pace.Ideal(day.Pace.Rate),
            { } other => throw new UserException($"--pace {other} is not known: ideal or esp32."),
        };
        long seed = parsed.GetValue(options.Seed) ?? day.Shop.Seed;
        int seeds = parsed.GetValue(options.Seeds);
        if (seeds < 1)
        {
            throw new UserException($"--seeds {seeds} is not allowed: 1 or more.");
        }

        if (seeds > 1)
        {
            return DaySeries.Run(day, seed, seeds);
        }

        NamedFile.Check(parsed.GetValue(options.Chart), "--chart ");
        NamedFile.Check(parsed.GetValue(options.Csv), "--csv ");
        DayRun run = new DayRun(day, seed, isTraced: true).Run();
        DayReport.Print(day, run);
        if (parsed.GetValue(options.Console))
        {
            Console.WriteLine("what the board's console said:");
            Console.Write(SentText.Of(run.Rig.Board.Serial.TakeSent()));
            Console.WriteLine();
        }

        if (parsed.GetValue(options.Chart) is null && defaultChart is not null)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(defaultChart)!);
        }

        if ((parsed.GetValue(options.Chart) ?? defaultChart) is { } chart)
        {
            DayChart.Save(chart, $"{day.Name}, seed {seed}", run.Trace, DayMarks.Of(day));
            Console.WriteLine($"chart: {chart}");
        }

        if (parsed.GetValue(options.Csv) is { } csv)
        {
            TraceCsv.Save(csv, run.Trace);
            Console.WriteLine($"trace: {csv}");
        }

        return run.IsGood ? ExitCode.Good : ExitCode.Bad;
    }

    private sealed class Options
    {
        public Option<long?> Seed { get; } = new("--seed") { Description = "Seed of all chance; the day's own without it." };

        public Option<int> Seeds { get; } = new("--seeds")
        {
            Description = "Run so many seeds in a row and print the sums.",
            DefaultValueFactory = _ => 1,
        };

        public Option<string?> Chart { get; } = new("--chart") { Description = "Write a chart to this PNG file." };

        public Option<bool> Console { get; } = new("--console") { Description = "Show what the board's console said, too." };

        public Option<string?> Csv { get; } = new("--csv") { Description = "Write twenty looks a second to this CSV file." };

        public Option<string?> Pace { get; } = new("--pace")
        {
            Description = "ideal (work takes no time) or esp32 (readings, work and flash writes take the board's time); the "
                + "day's own without it.",
        };

        public void AddTo(Command command)
        {
            foreach (Option option in (Option[])[Pace, Seed, Seeds, Chart, Csv, Console])
            {
                command.Options.Add(option);
            }
        }
    }
}
