using CsvHelper;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>A file with a table of numbers. It is read row by row, and never held as a whole.</summary>
internal sealed class TableFile
{
    private const long LargestFile = 500L * 1000 * 1000;
    private const int RowsBetweenProgress = 20_000;
    private const int EnoughToTell = 50;

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

    /// <summary>Reads all rows.</summary>
    /// <param name="take">Takes the cells of each, and its line, from 1.</param>
    /// <param name="progress">Takes the part that is done, 0 to 1.</param>
    public void ForEachRow(Action<string[], int> take, Action<double>? progress = null) => Guard(
        _path,
        () =>
        {
            using StreamReader reader = new(_path);
            for (int line = 1; line < Layout.FirstLine; line++)
            {
                reader.ReadLine();
            }

            using CsvParser parser = TableLayout.Parser(reader, Layout.Separator);
            for (int row = 0; parser.Read(); row++)
            {
                take(TableLayout.Cells(parser.Record!, Layout.Separator), parser.RawRow + Layout.FirstLine - 1);
                if (row % RowsBetweenProgress == 0)
                {
                    progress?.Invoke((double)reader.BaseStream.Position / Math.Max(1, reader.BaseStream.Length));
                }
            }

            return 0;
        });

    /// <summary>Looks at every column that holds numbers.</summary>
    /// <param name="progress">Takes the part that is done, 0 to 1.</param>
    /// <returns>
    /// What each looks like, and null for one of words; and the last line where a copy broke off within it, else 0.
    /// </returns>
    public (ColumnSurvey?[] Columns, int CutLine) Survey(Action<double>? progress = null)
    {
        ColumnSurvey?[] surveys = [.. Layout.IsNumber.Select(isNumber => isNumber ? new ColumnSurvey() : null)];
        (string[] Cells, int Line) last = ([], 0);
        ForEachRow(
            (cells, line) =>
            {
                Take(surveys, last.Cells, last.Line);
                last = (cells, line);
            },
            progress);
        if (surveys.Where((survey, i) => survey is not null && IsCut(survey, last.Cells, i)).Any())
        {
            return (surveys, last.Line);
        }

        Take(surveys, last.Cells, last.Line);
        return (surveys, 0);
    }

    /// <summary>Gives a cell's number.</summary>
    /// <param name="cells">The row.</param>
    /// <param name="column">The column, from 1.</param>
    /// <param name="line">The row's line, for complaints.</param>
    /// <returns>The number.</returns>
    public double Number(string[] cells, int column, int line) =>
        column > cells.Length
            ? throw new UserException($"{_path} line {line}: there is no column {column}; the row has {cells.Length}.")
        : TableLayout.TryNumber(cells[column - 1], out double value) ? value
        : throw new UserException($"{_path} line {line}: '{cells[column - 1]}' in column {column} is not a number.");

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

    private static void Take(ColumnSurvey?[] surveys, string[] cells, int line)
    {
        for (int i = 0; i < surveys.Length && line > 0; i++)
        {
            if (i < cells.Length && TableLayout.TryNumber(cells[i], out double value))
            {
                surveys[i]?.Add(value, line);
            }
            else
            {
                surveys[i]?.AddBad(line);
            }
        }
    }

    // Half a row, or half a time.
    private static bool IsCut(ColumnSurvey survey, string[] cells, int column) =>
        survey is { Count: > 1, BadLine: 0 }
        && (column >= cells.Length
            || !TableLayout.TryNumber(cells[column], out double value)
            || (survey is { LooksLikeTimes: true, Falls: 0, Count: > EnoughToTell } && value < survey.Last));
}
