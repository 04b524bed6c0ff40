using System.Globalization;
using NanoDustSwitch.Simulator.Commands;

namespace NanoDustSwitch.Simulator.Replay;

/// <summary>One column of a recorded table of numbers.</summary>
internal static class Recording
{
    private const long LargestFile = 500L * 1000 * 1000;
    private static readonly char[] s_separators = [',', ';', '\t', ' '];

    /// <summary>Reads a column.</summary>
    /// <param name="path">The file: rows of numbers between commas, semicolons, tabs or blanks; the first row may be a header.</param>
    /// <param name="column">The column, from 1.</param>
    /// <returns>Its numbers, one a row.</returns>
    public static double[] Read(string path, int column)
    {
        if (Directory.Exists(path))
        {
            throw new UserException($"{path} is a folder; a recording is a CSV file.");
        }

        if (!File.Exists(path))
        {
            throw new UserException($"There is no file {path}.");
        }

        try
        {
            if (new FileInfo(path).Length > LargestFile)
            {
                throw new UserException($"{path} is larger than 500 MB; cut the recording first.");
            }

            return Parse(path, File.ReadLines(path), column);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new UserException($"{path} cannot be read: {exception.Message}", exception);
        }
    }

    private static double[] Parse(string path, IEnumerable<string> lines, int column)
    {
        List<double> values = [];
        int number = 0;
        foreach (string line in lines)
        {
            number++;
            string[] cells = line.Split(s_separators, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (cells.Length == 0)
            {
                continue;
            }

            if (cells.Length < column)
            {
                throw new UserException($"{path} line {number}: there is no column {column}; the row has {cells.Length}.");
            }

            bool isNumber = double.TryParse(cells[column - 1], NumberStyles.Float, CultureInfo.InvariantCulture, out double value);
            if (isNumber && double.IsFinite(value))
            {
                values.Add(value);
            }
            else if (number > 1)
            {
                throw new UserException($"{path} line {number}: '{cells[column - 1]}' in column {column} is not a number.");
            }
        }

        return values.Count > 0 ? [.. values] : throw new UserException($"{path} has no row of numbers.");
    }
}
