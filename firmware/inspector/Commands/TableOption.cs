using System.CommandLine;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>What a person may say of a table of readings; a board's own recording needs none of it.</summary>
internal sealed class TableOption
{
    private const double LongestLead = 3600;

    private readonly Option<double?> _rate = new("--rate")
    {
        Description = "Readings a second, 400 to 20,000, where no column holds times.",
    };
    private readonly Option<int?> _column = new("--column")
    {
        Description = "Column of the current, from 1; the first that holds no times without it.",
    };
    private readonly Option<string?> _unit = new("--unit")
    {
        Description =
            "A, mA (both through the default sensor's model) or counts of the board's converter; what it looks like without it.",
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

    /// <summary>Gives a command these options.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[_rate, _column, _unit, _scale, _lead, _seed])
        {
            command.Options.Add(option);
        }
    }

    /// <summary>Gives what was said.</summary>
    /// <param name="parsed">The command line.</param>
    /// <returns>The options, within their ranges.</returns>
    public TableOptions Of(ParseResult parsed) => new(
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
        parsed.GetValue(_seed));

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
