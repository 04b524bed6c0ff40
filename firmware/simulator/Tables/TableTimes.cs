using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>When the rows of a table were read.</summary>
/// <param name="Column">The column of times, from 1; 0 where the rows lie at even distances and no column is asked.</param>
/// <param name="Factor">What makes seconds of its numbers.</param>
/// <param name="Begin">Time of the first row, s.</param>
/// <param name="Rate">Rows a second, in the mean.</param>
/// <param name="IsEven">Whether the rows lie at even distances.</param>
/// <param name="Understood">What was understood, and how a person changes it.</param>
internal sealed record TableTimes(int Column, double Factor, double Begin, double Rate, bool IsEven, string Understood)
{
    private const double LongestGap = 1 / TableReadings.LeastRate;
    private const double Rounding = 1.001;
    private const int LeastStamps = 50;
    private const double Tolerance = 0.01;

    /// <summary>Finds the column that holds times by its name or by its numbers, whether or not it can be used.</summary>
    /// <param name="layout">How the file is written.</param>
    /// <param name="surveys">What its columns look like.</param>
    /// <param name="options">What a person says of it.</param>
    /// <returns>The column, from 1; 0 where there is none.</returns>
    public static int ColumnOf(TableLayout layout, ColumnSurvey?[] surveys, TableOptions options)
    {
        if (options.TimeColumn is { } said)
        {
            return said;
        }

        int[] free =
        [
            .. Enumerable.Range(1, surveys.Length).Where(column => column != options.Column && surveys[column - 1] is not null),
        ];
        int named = Array.Find(free, column => layout.Names[column - 1].Kind == ColumnKind.Time);
        return named > 0 ? named : Array.Find(
            free,
            column => layout.Names[column - 1].Kind == ColumnKind.Unknown
                && surveys[column - 1]!.LooksLikeTimes
                && !surveys[column - 1]!.CountsRows);
    }

    /// <summary>Finds out when the rows were read.</summary>
    /// <param name="path">The file, for complaints.</param>
    /// <param name="layout">How it is written.</param>
    /// <param name="surveys">What its columns look like.</param>
    /// <param name="column">The column of times, from 1; 0 where there is none.</param>
    /// <param name="options">What a person says of it.</param>
    /// <returns>The times.</returns>
    public static TableTimes Of(
        string path, TableLayout layout, ColumnSurvey?[] surveys, int column, TableOptions options)
    {
        ColumnSurvey? times = column > 0 && column <= surveys.Length ? surveys[column - 1] : null;
        if (times is null && options.TimeColumn is not null)
        {
            throw new UserException($"{path} has no numbers in column {column}; --time-column names one that has.");
        }

        if (options.Rate is { } rate)
        {
            string against = Against(rate, layout, times, column);
            return new TableTimes(0, 1, 0, rate, true, $"{rate:#,0.##} readings a second, by --rate{against}");
        }

        if (times is null)
        {
            return layout.Step is { } step
                ? new TableTimes(
                    0,
                    1,
                    step.Start,
                    1 / step.Seconds,
                    true,
                    $"{1 / step.Seconds:#,0.##} readings a second{From(step.Start)}, by the lines above (--rate changes that)")
                : throw new UserException(
                    $"No column of {path} holds times that rise from row to row; --rate says how many readings a second it has.");
        }

        ColumnName name = layout.Names[column - 1];
        return OfColumn(path, times, column, name.Kind == ColumnKind.Time ? name : ColumnName.Of("s"), name.Unit.Length > 0);
    }

    private static TableTimes OfColumn(string path, ColumnSurvey times, int column, ColumnName unit, bool isNamed)
    {
        string symbol = unit.Unit.Length > 0 ? unit.Unit : "s";
        if (times.Falls > 0)
        {
            throw new UserException(
                $"{path} line {times.FallLine}: the time in column {column} falls from {times.FallFrom:G9}; cut the file there. "
                + "Where the readings lie at even distances, --rate says how many a second; --time-column names another column.");
        }

        double rate = times.Last > times.First ? (times.Count - 1) / ((times.Last - times.First) * unit.Factor) : 0;
        if (rate < TableReadings.LeastRate)
        {
            throw new UserException(
                $"{path} has {rate:0.###} readings a second by the times in column {column}; it takes "
                + $"{TableReadings.LeastRate:0} at least, as a bucket of 2.5 ms wants one. Are these times in seconds? A header "
                + "says 'ms' or 'us', --time-column names another column, --rate goes before it.");
        }

        double longest = times.LongestStep * unit.Factor;
        double shortest = times.ShortestStep * unit.Factor;
        bool isCoarse = times.Repeats > 0;
        bool isEven = isCoarse || (longest * rate < 1.5 && shortest * rate > 0.5);
        bool areStamps = isCoarse && longest < 1.5 * shortest && times.Count - times.Repeats >= LeastStamps;
        if (longest > LongestGap * Rounding && !areStamps)
        {
            throw new UserException($"{path} has a gap of {longest:0.#####} s between two readings; 2.5 ms is the longest.");
        }

        double begin = times.First * unit.Factor;
        return new TableTimes(
            column,
            unit.Factor,
            begin,
            rate,
            isEven,
            $"column {column} is the time in {symbol}"
            + (isNamed ? "" : ", as nothing says otherwise (--time-column changes that)")
            + $"{From(begin)}, {rate:#,0.##} readings a second"
            + (isCoarse ? ", taken at even distances as the times repeat (--rate changes that)"
                : isEven ? "" : " at uneven distances"));
    }

    private static string From(double begin) => begin == 0 ? "" : $", from {begin:0.######} s on";

    // What the times say themselves, where that is something else.
    private static string Against(double rate, TableLayout layout, ColumnSurvey? times, int column)
    {
        double own = times is { Falls: 0 } && times.Last > times.First
            ? (times.Count - 1) / ((times.Last - times.First) * layout.Names[column - 1].Factor)
            : rate;
        return Math.Abs((own / rate) - 1) > Tolerance ? $", and not {own:#,0.##} as the times in column {column} say" : "";
    }
}
