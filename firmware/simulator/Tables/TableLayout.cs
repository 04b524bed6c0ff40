using CsvHelper;
using CsvHelper.Configuration;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>How a table of numbers is written: its separator, where its numbers begin and what stands above them.</summary>
/// <param name="Separator">What stands between two cells.</param>
/// <param name="FirstLine">The line with the first numbers, from 1.</param>
/// <param name="IsNumber">For each column whether it holds numbers.</param>
/// <param name="Names">What stands above each column, empty where nothing does.</param>
/// <param name="HasDecimalComma">Whether the numbers have a decimal comma.</param>
internal sealed record TableLayout(string Separator, int FirstLine, bool[] IsNumber, string[] Names, bool HasDecimalComma)
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
        // What stands above the numbers may be written in any way; what the last of these lines is, the table is.
        string[] lines = [.. File.ReadLines(path).Take(LinesLookedAt)];
        string sample = Array.FindLast(lines, line => line.Trim().Length > 0) ?? "";
        string separator = s_separators.MaxBy(candidate => Score(Cells(sample, candidate)))!;
        string[] cells = Cells(sample, separator);
        bool[] isNumber = [.. cells.Select(cell => TryNumber(cell, out _))];
        if (!isNumber.Contains(true))
        {
            return null;
        }

        List<string[]> above = [];
        int first = 0;
        while (first < lines.Length && !HasNumbers(Cells(lines[first], separator), isNumber))
        {
            above.Add(Cells(lines[first++], separator));
        }

        string[] names =
        [
            .. cells.Select((_, column) =>
                string.Join(' ', above.Where(row => row.Length >= cells.Length).Select(row => row[column])).Trim()),
        ];
        bool hasComma = separator != "," && cells.Where((cell, column) => isNumber[column]).Any(cell => cell.Contains(','));
        return new TableLayout(separator, first + 1, isNumber, names, hasComma);
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
}
