namespace NanoDustSwitch.Simulator.Tables;

/// <summary>One column of a recorded table of numbers.</summary>
internal static class Recording
{
    /// <summary>Reads a column.</summary>
    /// <param name="path">The file: rows of numbers between commas, semicolons, tabs or blanks; there may be header lines above
    /// them.</param>
    /// <param name="column">The column, from 1.</param>
    /// <returns>Its numbers, one a row.</returns>
    public static double[] Read(string path, int column)
    {
        TableFile file = TableFile.Open(path);
        List<double> values = [];
        file.ForEachRow((cells, line) => values.Add(file.Number(cells, column, line)));
        return [.. values];
    }
}
