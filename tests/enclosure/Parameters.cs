using System.Text.RegularExpressions;

namespace NanoDustSwitch.EnclosureTests;

/// <summary>
/// The numbers of hardware/enclosure/parameters.scad, in mm. Derived sizes are worked out here once more, apart from the
/// drawings.
/// </summary>
internal sealed partial class Parameters
{
    private readonly Dictionary<string, double[]> _values = new(StringComparer.Ordinal);

    private Parameters(string text)
    {
        foreach (string line in text.ReplaceLineEndings("\n").Split('\n'))
        {
            if (line.Length == 0 || line.StartsWith("//", StringComparison.Ordinal))
            {
                continue;
            }

            Match match = Assignment().Match(line);
            if (!match.Success || !_values.TryAdd(match.Groups["name"].Value, Numbers(match.Groups["value"].Value)))
            {
                throw new FormatException(
                    $"parameters.scad: '{line}' is no 'name = number;' or 'name = [number, ...];', "
                    + "or names one for the second time.");
            }
        }
    }

    /// <summary>Gets the file's text.</summary>
    public static string Text => File.ReadAllText(Repository.PathOf("hardware/enclosure/parameters.scad"));

    public double BarrierDepth => (2 * this["barrier_wall"]) + this["barrier_gap"];

    public double BarrierWidth => this["box_inside", 1] - (2 * this["barrier_side_gap"]);

    /// <summary>Gets the barrier's screws, from its face to the mains compartment.</summary>
    public double BarrierScrew => BarrierDepth + (this["barrier_flange"] / 2);

    public double CradleLength => this["board", 0] + (2 * this["cradle_margin"]);

    public double CradleWidth => this["board", 1] + (2 * this["cradle_margin"]);

    /// <summary>Gets how high the board's parts reach above the mounting plate.</summary>
    public double BoardTop => this["cradle_floor"] + this["board_post"] + this["board", 2] + this["board_parts"];

    public double GuardHeight => this["guard_floor"] + this["button_proud"] + this["guard_above"];

    public double this[string name] => this[name, 0];

    public double this[string name, int index] => _values[name][index];

    /// <summary>Reads the file as it is.</summary>
    public static Parameters Read() => new(Text);

    /// <summary>Reads the file with another value for one name.</summary>
    /// <param name="name">The name.</param>
    /// <param name="value">The value, as in the file.</param>
    public static Parameters ReadWith(string name, string value)
    {
        string changed = Regex.Replace(
            Text, $"^{name} = [^;]+;", $"{name} = {value};", RegexOptions.Multiline, TimeSpan.FromSeconds(1));
        Assert.AreNotEqual(Text, changed, $"{name} is no parameter, or has this value already.");
        return new Parameters(changed);
    }

    /// <summary>Gives the length of a sensor holder.</summary>
    /// <param name="body">'ring_body' or 'split_body'.</param>
    public double HolderLength(string body) => this[body, 0] + (2 * (this["fit"] + this["sensor_wall"] + this["sensor_ear"]));

    /// <summary>Gives the depth of a sensor holder along the wire.</summary>
    /// <param name="body">'ring_body' or 'split_body'.</param>
    public double HolderDepth(string body) => this[body, 1] + (2 * (this["fit"] + this["sensor_wall"]));

    /// <summary>Gives the holes for wires in the barrier's wall with the foot, from the barrier's end.</summary>
    public IEnumerable<double> Crossings() => Enumerable.Range(0, (int)this["crossing_holes"])
        .Select(i => this["crossing_from"] + (i * this["crossing_pitch"]) + this["crossing_apart"]);

    /// <summary>Gives the screws of the barrier's foot, from the barrier's end.</summary>
    public double[] BarrierScrews() =>
        [(BarrierWidth / 8) + 6, 3 * BarrierWidth / 8, 5 * BarrierWidth / 8, (7 * BarrierWidth / 8) - 6];

    /// <summary>Gives all numbers of a list.</summary>
    /// <param name="name">Its name.</param>
    public IReadOnlyList<double> All(string name) => _values[name];

    private static double[] Numbers(string value) => [.. value.Trim('[', ']').Split(',').Select(double.Parse)];

    [GeneratedRegex(@"^(?<name>[a-z_]+) = (?<value>[\d.]+|\[[\d., ]+\]);", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Assignment();
}
