namespace NanoDustSwitch.Simulator.Tables;

/// <summary>The readings of a table: counts or amperes at even distances.</summary>
/// <param name="Values">The readings.</param>
/// <param name="IsCounts">Whether they are counts of the board's own converter; amperes otherwise.</param>
/// <param name="Rate">Readings a second.</param>
/// <param name="Understood">What was understood of the file, in a sentence or two.</param>
/// <param name="Begin">Time of the first reading by the file's own times, s; negative before a trigger.</param>
/// <param name="Fine">More of the readings than the board takes, for the spectrum; null where there are no more.</param>
/// <param name="FineRate">How many a second these are.</param>
internal sealed record TableReadings(
    float[] Values, bool IsCounts, double Rate, string Understood, double Begin = 0, float[]? Fine = null, double FineRate = 0)
{
    /// <summary>Least readings a second.</summary>
    public const double LeastRate = 400;

    /// <summary>Greatest readings a second that <c>--rate</c> takes.</summary>
    public const double GreatestRate = 100_000_000;

    /// <summary>Reads a table.</summary>
    /// <param name="path">The file.</param>
    /// <param name="options">What a person says of it.</param>
    /// <param name="progress">Takes the part that is done, 0 to 1.</param>
    /// <returns>Its readings.</returns>
    public static TableReadings Read(string path, TableOptions options, Action<double>? progress = null)
    {
        TableFile file = TableFile.Open(path);
        TableLayout layout = file.Layout;
        (ColumnSurvey?[] surveys, int cutLine) = file.Survey(part => progress?.Invoke(part / 2));
        int timeColumn = TableTimes.ColumnOf(layout, surveys, options);
        TableValues values = TableValues.Of(path, layout, surveys, timeColumn, options);
        TableTimes times = TableTimes.Of(path, layout, surveys, timeColumn, options);
        int rows = surveys[values.Column - 1]!.Count;
        Resampler resampler = new(times, rows);
        int row = 0;
        file.ForEachRow(
            (cells, line) =>
            {
                if (line != cutLine)
                {
                    double time = times.Column > 0 && !times.IsEven
                        ? (file.Number(cells, times.Column, line) * times.Factor) - times.Begin
                        : row / times.Rate;
                    resampler.Add(time, file.Number(cells, values.Column, line) * values.Factor);
                    row++;
                }
            },
            part => progress?.Invoke(0.5 + (part / 2)));
        resampler.End();

        // What reading a large file left behind goes back to the system before charts and pages take theirs.
        GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive);
        int count = layout.IsNumber.Length;
        string understood = $"{count} column{(count == 1 ? "" : $"s between {layout.SeparatorName}")}"
            + $"{(layout.HasDecimalComma ? ", decimal comma" : "")}, numbers from line {layout.FirstLine}"
            + $"{(cutLine > 0 ? $", line {cutLine} is cut and left out" : "")}; {values.Understood}; {times.Understood}"
            + $"{(resampler.Rate < times.Rate || !times.IsEven ? $"; the board takes {resampler.Rate:#,0} of them" : "")}.";
        if (!values.IsCounts)
        {
            understood += ReadingsLook.TakeOffset(resampler) + ReadingsLook.Doubts(resampler.Values, resampler.Rate);
        }

        return new TableReadings(
            resampler.Values, values.IsCounts, resampler.Rate, understood, times.Begin, resampler.Fine, resampler.FineRate);
    }
}
