using System.CommandLine;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>What a person may say of a table of readings; a board's own recording needs none of it.</summary>
internal sealed class TableOption
{
    private const double LongestLead = 3600;

    private readonly Option<double?> _rate = new("--rate")
    {
        Description = "Readings a second, 400 and up, where no column holds times; of more than 20,000 the board takes 2,000.",
    };
    private readonly Option<int?> _column = new("--column")
    {
        Description = "Column of the current, from 1; without it the first current by name, or the first that holds no times.",
    };
    private readonly Option<int?> _timeColumn = new("--time-column")
    {
        Description = "Column of the times, from 1; without it the first that is one by its name or by its numbers.",
    };
    private readonly Option<string?> _unit = new("--unit")
    {
        Description =
            "A, mA, uA, kA (through the default sensor's model) or counts of the board's converter; without it as the name says.",
    };
    private readonly Option<double?> _scale = new("--scale")
    {
        Description = "Factor on every number before it is used; amperes a volt for an oscilloscope's recording.",
    };
    private readonly Option<double> _lead = new("--lead")
    {
        Description = "Seconds of modelled idle before and after.",
        DefaultValueFactory = _ => 2,
    };
    private readonly Option<long> _seed = new("--seed") { Description = "Seed of the noise.", DefaultValueFactory = _ => 1 };

    private Option[] All => [_rate, _column, _timeColumn, _unit, _scale, _lead, _seed];

    /// <summary>Gives a command these options.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        foreach (Option option in All)
        {
            command.Options.Add(option);
        }
    }

    /// <summary>Opens recordings.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="files">The files.</param>
    /// <returns>The recordings.</returns>
    public ReplaySource[] Open(ParseResult parsed, params string[] files)
    {
        TableOptions options = Of(parsed);
        List<ReplaySource> sources = [];
        Wait.For("read", progress =>
        {
            foreach (string file in files)
            {
                double done = sources.Count;
                sources.Add(SourceFile.Open(file, options, part => progress((done + part) / files.Length)));
            }
        });
        Option? idle = sources.Exists(source => source is TableSource)
            ? null
            : All.FirstOrDefault(option => parsed.GetResult(option) is { Implicit: false });
        return idle is null
            ? [.. sources]
            : throw new UserException($"{idle.Name} is for recordings of other instruments; a board's own says all that itself.");
    }

    private TableOptions Of(ParseResult parsed) => new(
        parsed.GetValue(_rate) is { } rate
            ? Within(
                rate,
                TableReadings.LeastRate,
                TableReadings.GreatestRate,
                "--rate",
                "readings a second, as a bucket of 2.5 ms wants one at least")
            : null,
        parsed.GetValue(_column) is { } column ? (int)Within(column, 1, 1000, "--column", "") : null,
        parsed.GetValue(_unit) is { } unit ? Unit(unit) : null,
        parsed.GetValue(_scale) is { } scale ? Within(scale, -1e6, 1e6, "--scale", "as a factor") : null,
        Within(parsed.GetValue(_lead), 0, LongestLead, "--lead", "seconds"),
        parsed.GetValue(_seed),
        parsed.GetValue(_timeColumn) is { } time ? (int)Within(time, 1, 1000, "--time-column", "") : null);

    private static double Within(double value, double least, double greatest, string option, string what) =>
        value >= least && value <= greatest
            ? value
            : throw new UserException($"{option} {value} is not allowed: {least:#,0} to {greatest:#,0} {what}".TrimEnd() + ".");

    private static string Unit(string text) => ColumnName.Of(text).Kind is ColumnKind.Current or ColumnKind.Counts
        ? text
        : throw new UserException($"--unit {text} is not known: A, mA, uA, kA or counts.");
}
