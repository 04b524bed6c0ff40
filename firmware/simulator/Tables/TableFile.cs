using CsvHelper;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>A file with a table of numbers.</summary>
internal sealed class TableFile
{
    private const long LargestFile = 500L * 1000 * 1000;

    private readonly string _path;

    private TableFile(string path, TableLayout layout)
    {
        _path = path;
        Layout = layout;
    }

    /// <summary>Gets how it is written.</summary>
    public TableLayout Layout { get; }

    /// <summary>Checks that a file is there and can be read.</summary>
    /// <param name="path">The file.</param>
    public static void Check(string path)
    {
        if (Directory.Exists(path))
        {
            throw new UserException($"{path} is a folder; a recording is a file.");
        }

        if (!File.Exists(path))
        {
            throw new UserException($"There is no file {path}.");
        }

        Guard(
            path,
            () => new FileInfo(path).Length > LargestFile
                ? throw new UserException($"{path} is larger than 500 MB; cut the recording first.")
                : 0);
    }

    /// <summary>Opens a table.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The table.</returns>
    public static TableFile Open(string path)
    {
        Check(path);
        return Guard(
            path, () => new TableFile(path, TableLayout.Of(path) ?? throw new UserException($"{path} has no row of numbers.")));
    }

    /// <summary>Reads columns.</summary>
    /// <param name="columns">Which, from 1.</param>
    /// <returns>The numbers of each.</returns>
    public double[][] Read(params int[] columns) => Guard(_path, () => ReadAll(columns));

    /// <summary>Reads, and says in a sentence what is wrong with the file.</summary>
    /// <typeparam name="T">What is read.</typeparam>
    /// <param name="path">The file.</param>
    /// <param name="work">What reads it.</param>
    /// <returns>What was read.</returns>
    public static T Guard<T>(string path, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new UserException($"{path} cannot be read: {exception.Message}", exception);
        }
        catch (CsvHelperException exception)
        {
            throw new UserException($"{path} is no table of numbers.", exception);
        }
    }

    private double[][] ReadAll(int[] columns)
    {
        List<double>[] values = [.. columns.Select(_ => new List<double>())];
        using StreamReader reader = new(_path);
        for (int line = 1; line < Layout.FirstLine; line++)
        {
            reader.ReadLine();
        }

        using CsvParser parser = TableLayout.Parser(reader, Layout.Separator);
        while (parser.Read())
        {
            string[] cells = TableLayout.Cells(parser.Record!, Layout.Separator);
            int line = parser.RawRow + Layout.FirstLine - 1;
            for (int i = 0; i < columns.Length; i++)
            {
                if (columns[i] > cells.Length)
                {
                    throw new UserException($"{_path} line {line}: there is no column {columns[i]}; the row has {cells.Length}.");
                }

                string cell = cells[columns[i] - 1];
                values[i].Add(TableLayout.TryNumber(cell, out double value)
                    ? value
                    : throw new UserException($"{_path} line {line}: '{cell}' in column {columns[i]} is not a number."));
            }
        }

        return [.. values.Select(column => column.ToArray())];
    }
}
