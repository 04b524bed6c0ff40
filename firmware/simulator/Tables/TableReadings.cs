using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>The readings of a table: counts or amperes at even distances.</summary>
/// <param name="Values">The readings.</param>
/// <param name="IsCounts">Whether they are counts of the board's own converter; amperes otherwise.</param>
/// <param name="Rate">Readings a second.</param>
/// <param name="Understood">What was understood of the file, in a sentence or two.</param>
/// <param name="Fine">More of the readings than the board takes, for the spectrum; null where there are no more.</param>
/// <param name="FineRate">How many a second these are.</param>
internal sealed record TableReadings(
    double[] Values, bool IsCounts, double Rate, string Understood, double[]? Fine = null, double FineRate = 0)
{
    /// <summary>Least readings a second.</summary>
    public const double LeastRate = 400;

    /// <summary>Greatest readings a second.</summary>
    public const double GreatestRate = 20_000;

    // Of an oscilloscope's readings the board takes as many as it is planned to.
    private const double BoardRate = 2000;
    private const double MostForSpectrum = 10_000;
    private const double LongestGap = 1 / LeastRate;

    /// <summary>Reads a table.</summary>
    /// <param name="path">The file.</param>
    /// <param name="options">What a person says of it.</param>
    /// <returns>Its readings.</returns>
    public static TableReadings Read(string path, TableOptions options)
    {
        TableFile file = TableFile.Open(path);
        TableLayout layout = file.Layout;
        int timeColumn = TimeColumn(file, options);
        int column = options.Column ?? ValueColumn(path, layout, timeColumn);
        if (options.Rate is null && timeColumn == 0)
        {
            throw new UserException(
                $"No column of {path} holds times that rise from row to row; --rate says how many readings a second it has.");
        }

        double[][] columns = timeColumn > 0 ? file.Read(timeColumn, column) : file.Read(column);
        double[] values = columns[^1];
        string name = column <= layout.Names.Length ? layout.Names[column - 1] : "";
        (RecordingUnit unit, string by) = options.Unit is { } said
            ? (said, "by --unit")
            : TableColumns.UnitOf(name, values, options.Scale is not null, column);
        double factor = (options.Scale ?? 1) * (unit == RecordingUnit.Milliamperes ? 0.001 : 1);
        values = [.. values.Select(value => value * factor)];
        string understood =
            $"{layout.IsNumber.Length} column{(layout.IsNumber.Length == 1 ? "" : $"s between {layout.SeparatorName}")}"
            + $"{(layout.HasDecimalComma ? ", decimal comma" : "")}, numbers from line {layout.FirstLine}; column "
            + $"{column}{(name.Length > 0 ? $" ('{name}')" : "")} in {Name(unit)}, {by}";
        bool isCounts = unit == RecordingUnit.Counts;
        if (options.Rate is { } rate)
        {
            return new TableReadings(values, isCounts, rate, $"{understood}; {rate:#,0.##} readings a second, by --rate.");
        }

        double unitSeconds = TableColumns.SecondsOf(timeColumn <= layout.Names.Length ? layout.Names[timeColumn - 1] : "");
        understood += $"; column {timeColumn} is the time in {(unitSeconds == 1 ? "s" : unitSeconds > 1e-4 ? "ms" : "µs")}";
        return OfTimes(path, [.. columns[0].Select(time => time * unitSeconds)], values, isCounts, understood);
    }

    // The first that holds times; 0 where none does.
    private static int TimeColumn(TableFile file, TableOptions options)
    {
        bool[] isNumber = file.Layout.IsNumber;
        int first = Array.IndexOf(isNumber, true) + 1;
        return first > 0
            && first != options.Column
            && (options.Rate is null || isNumber.Count(one => one) > 1)
            && TableColumns.AreTimes(file.Read(first)[0])
            ? first
            : 0;
    }

    private static int ValueColumn(string path, TableLayout layout, int timeColumn)
    {
        int found = Array.FindIndex(layout.IsNumber, timeColumn, isNumber => isNumber);
        return found >= 0 ? found + 1 : throw new UserException($"{path} has a column of times and no other numbers.");
    }

    private static TableReadings OfTimes(string path, double[] times, double[] values, bool isCounts, string understood)
    {
        double rate = (times.Length - 1) / (times[^1] - times[0]);
        if (rate < LeastRate)
        {
            throw new UserException(
                $"{path} has {rate:0.###} readings a second; it takes {LeastRate:0} at least, as a bucket of 2.5 ms wants one. "
                + "Are its times in seconds, or does a header say 'ms' or 'us'?");
        }

        double longest = 0;
        double unevenness = 0;
        for (int i = 1; i < times.Length; i++)
        {
            longest = Math.Max(longest, times[i] - times[i - 1]);
            unevenness = Math.Max(unevenness, Math.Abs(times[i] - times[0] - (i / rate)) * rate);
        }

        if (longest > LongestGap * 1.001)
        {
            throw new UserException($"{path} has a gap of {longest:0.#####} s between two readings; 2.5 ms is the longest.");
        }

        if (rate <= GreatestRate && unevenness < 1)
        {
            return new TableReadings(values, isCounts, rate, $"{understood}, {rate:#,0.##} readings a second.");
        }

        // A converter holds a moment and no mean: the reading nearest to each time.
        int count = (int)((times[^1] - times[0]) * BoardRate) + 1;
        double[] taken = new double[count];
        int at = 0;
        for (int i = 0; i < count; i++)
        {
            double time = times[0] + (i / BoardRate);
            while (at + 1 < times.Length && Math.Abs(times[at + 1] - time) <= Math.Abs(times[at] - time))
            {
                at++;
            }

            taken[i] = values[at];
        }

        (double[]? fine, double fineRate) = unevenness < 1 ? Means(values, (int)(rate / MostForSpectrum), rate) : (null, 0);
        string why = unevenness < 1 ? "" : " at uneven distances";
        return new TableReadings(
            taken,
            isCounts,
            BoardRate,
            $"{understood}, {rate:#,0.##} readings a second{why}; the board takes {BoardRate:#,0} of them.",
            fine,
            fineRate);
    }

    private static (double[] Values, double Rate) Means(double[] values, int together, double rate)
    {
        int each = Math.Max(1, together);
        double[] means = [.. values.Chunk(each).Where(chunk => chunk.Length == each).Select(chunk => chunk.Average())];
        return (means, rate / each);
    }

    private static string Name(RecordingUnit unit) => unit switch
    {
        RecordingUnit.Counts => "counts",
        RecordingUnit.Milliamperes => "mA",
        _ => "A",
    };
}
