using System.Text.RegularExpressions;
using CsvHelper;
using CsvHelper.Configuration;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>How a table of numbers is written: its separator, where its numbers begin and what stands above them.</summary>
/// <param name="Separator">What stands between two cells.</param>
/// <param name="FirstLine">The line with the first numbers, from 1.</param>
/// <param name="IsNumber">For each column whether it holds numbers.</param>
/// <param name="Names">What stands above each column.</param>
/// <param name="HasDecimalComma">Whether the numbers have a decimal comma.</param>
/// <param name="Step">The distance of the readings, where the lines above name it; null otherwise.</param>
internal sealed partial record TableLayout(
    string Separator, int FirstLine, bool[] IsNumber, ColumnName[] Names, bool HasDecimalComma, HeaderStep? Step)
{
    private const int LinesLookedAt = 400;
    private static readonly string[] s_separators = ["\t", ";", ",", " "];

    /// <summary>Gets the separator in words.</summary>
    public string SeparatorName => Separator switch
    {
        "\t" => "tabs",
        ";" => "semicolons",
        "," => "commas",
        _ => "blanks",
    };

    /// <summary>Finds out how a file is written.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The layout; null where there is no row of numbers at its beginning.</returns>
    public static TableLayout? Of(string path)
    {
        // What stands above the numbers may be written in any way; what the last of these lines is, the table is. The very last
        // line of a file may be cut.
        string[] lines = [.. File.ReadLines(path).Take(LinesLookedAt)];
        string[] samples = [.. lines.Where(line => line.Trim().Length > 0).TakeLast(2)];
        (string sample, string separator) = samples
            .SelectMany(line => s_separators.Select(candidate => (line, candidate)))
            .DefaultIfEmpty(("", ","))
            .MaxBy(pair => Score(Cells(pair.Item1, pair.Item2)));
        string[] cells = Cells(sample, separator);
        bool[] isNumber = [.. cells.Select(cell => TryNumber(cell, out _))];
        if (!isNumber.Contains(true))
        {
            return null;
        }

        string[][] rows = [.. lines.Select(line => Cells(line, separator))];
        int first = Array.FindIndex(rows, row => HasNumbers(row, isNumber));
        string[][] above = rows[..first];
        string[] vertical = [.. rows.Where(row => row.Length > 1 && VerticalUnits().IsMatch(row[0])).Select(row => row[1])];
        ColumnName[] names = [.. cells.Select((_, column) => Name(above, column, isNumber, vertical))];
        bool hasComma = separator != "," && cells.Where((cell, column) => isNumber[column]).Any(cell => cell.Contains(','));
        return new TableLayout(separator, first + 1, isNumber, names, hasComma, HeaderStep.Of(rows));
    }

    /// <summary>Opens a parser on a file.</summary>
    /// <param name="reader">The file's text.</param>
    /// <param name="separator">What stands between two cells.</param>
    /// <returns>The parser.</returns>
    public static CsvParser Parser(TextReader reader, string separator) => new(
        reader,
        new CsvConfiguration(System.Globalization.CultureInfo.InvariantCulture)
        {
            Delimiter = separator,
            WhiteSpaceChars = separator == " " ? [] : [' '],
            BadDataFound = null,
            TrimOptions = TrimOptions.Trim,
            IgnoreBlankLines = true,
        });

    /// <summary>Gives the cells of a row; rows of blanks have no empty ones.</summary>
    /// <param name="record">The row as it was parsed.</param>
    /// <param name="separator">What stands between two cells.</param>
    /// <returns>The cells.</returns>
    public static string[] Cells(string[] record, string separator) =>
        separator == " " ? Array.FindAll(record, cell => cell.Length > 0) : record;

    /// <summary>Reads a number with a decimal point or a decimal comma.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="value">The number.</param>
    /// <returns>False when it is none.</returns>
    public static bool TryNumber(string cell, out double value)
    {
        string text = cell.Contains('.') ? cell : cell.Replace(',', '.');
        return double.TryParse(
            text, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out value)
            && double.IsFinite(value);
    }

    private static string[] Cells(string line, string separator)
    {
        using CsvParser parser = Parser(new StringReader(line), separator);
        return parser.Read() ? Cells(parser.Record!, separator) : [];
    }

    private static int Score(string[] cells) => cells.Where(cell => cell.Length > 0).Sum(cell => TryNumber(cell, out _) ? 1 : -1);

    private static bool HasNumbers(string[] cells, bool[] isNumber) =>
        !isNumber.Where((isOne, i) => isOne && (i >= cells.Length || !TryNumber(cells[i], out _))).Any();

    // Lines like "Source,CH1" say something of the instrument and name no column.
    private static ColumnName Name(string[][] above, int column, bool[] isNumber, string[] vertical)
    {
        ColumnName name = ColumnName.Of(string.Join(
            ' ',
            above.Where(row => row.Length >= isNumber.Length
                    && !InstrumentLine().IsMatch(row[0])
                    && !row.Where((cell, i) => i < isNumber.Length && isNumber[i] && TryNumber(cell, out _)).Any())
                .Select(row => row[column])).Trim());
        ColumnName other = vertical.Length > 0 ? ColumnName.Of(vertical[0]) : name;
        bool isValue = isNumber[column] && column != Array.IndexOf(isNumber, true);
        return name.Kind == ColumnKind.Unknown && isValue && other.Unit.Length > 0
            ? other with { Text = name.Text.Length > 0 ? $"{name.Text} {other.Text}" : other.Text }
            : name;
    }

    [GeneratedRegex("^vertical units?$", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex VerticalUnits();

    [GeneratedRegex(
        "(units|source|label|model|version|probe|coupling|scale|offset|position|length|interval|points?|rate|date)[ :]*$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex InstrumentLine();
}
