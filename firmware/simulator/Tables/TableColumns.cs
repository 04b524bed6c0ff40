using System.Text.RegularExpressions;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>Which column of a table holds times and which the current, and in what units.</summary>
internal static partial class TableColumns
{
    // Below that no converter rests that reads both halves of a current.
    private const double LeastCounts = 100;
    private const double MostCounts = 65_535;

    /// <summary>Gives the seconds that one of the numbers of a column of times is.</summary>
    /// <param name="name">What stands above it.</param>
    /// <returns>The seconds.</returns>
    public static double SecondsOf(string name) => Microseconds().IsMatch(name) ? 1e-6 : Milliseconds().IsMatch(name) ? 1e-3 : 1;

    /// <summary>Tells whether numbers can be times: each is later than the one before.</summary>
    /// <param name="values">The numbers.</param>
    /// <returns>True when they can.</returns>
    public static bool AreTimes(double[] values) =>
        values.Length > 1 && values.Zip(values.Skip(1)).All(pair => pair.Second > pair.First);

    /// <summary>Finds out what the numbers of a column are.</summary>
    /// <param name="name">What stands above it.</param>
    /// <param name="values">The numbers.</param>
    /// <param name="hasScale">Whether a person gave a factor that makes amperes of them.</param>
    /// <param name="number">The column's number, for complaints.</param>
    /// <returns>The unit, and what it was told by.</returns>
    public static (RecordingUnit Unit, string By) UnitOf(string name, double[] values, bool hasScale, int number)
    {
        if (Counts().IsMatch(name))
        {
            return (RecordingUnit.Counts, "by its name");
        }

        if (Milliamperes().IsMatch(name))
        {
            return (RecordingUnit.Milliamperes, "by its name");
        }

        if (Amperes().IsMatch(name))
        {
            return (RecordingUnit.Amperes, "by its name");
        }

        if (hasScale)
        {
            return (RecordingUnit.Amperes, "by --scale");
        }

        if (Volts().IsMatch(name))
        {
            throw new UserException(
                $"Column {number} is a voltage by its name, '{name}'; --scale says how many amperes one of its numbers is.");
        }

        bool areCounts = values.All(value => value == Math.Floor(value) && value is >= 0 and <= MostCounts)
            && values.Average() >= LeastCounts;
        return areCounts
            ? (RecordingUnit.Counts, "as they are whole numbers about one above 100")
            : (RecordingUnit.Amperes, "as nothing says otherwise");
    }

    [GeneratedRegex(
        "(?<![a-z])(us|µs|μs|usecs?|microseconds?)(?![a-z])", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Microseconds();

    [GeneratedRegex("(?<![a-z])(ms|msecs?|milliseconds?)(?![a-z])", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Milliseconds();

    [GeneratedRegex("(?<![a-z])(counts?|adc|raw|lsb)(?![a-z])", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Counts();

    [GeneratedRegex("(?<![A-Za-z])(mA|milliamp(s|eres?)?)(?![A-Za-z])", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Milliamperes();

    [GeneratedRegex("(?<![a-z])(a|amps?|amperes?)(?![a-z])", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Amperes();

    [GeneratedRegex("(?<![a-z])(m?v|volts?|millivolts?)(?![a-z])", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Volts();
}
