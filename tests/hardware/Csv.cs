using System.Globalization;
using CsvHelper;

namespace NanoDustSwitch.HardwareTests;

/// <summary>The tables of the hardware's pages.</summary>
internal static class Csv
{
    /// <summary>Gives the rows of a table, each with its columns by name.</summary>
    public static IDictionary<string, string>[] Rows(string path) =>
        [
            .. Records<dynamic>(path).Cast<IDictionary<string, object>>()
                .Select(row => row.ToDictionary(cell => cell.Key, cell => (string)cell.Value)),
        ];

    /// <summary>Gives the rows of a table as records whose properties name the columns.</summary>
    public static T[] Records<T>(string path)
    {
        using StringReader text = new(Repository.ReadText(path));
        using CsvReader csv = new(text, CultureInfo.InvariantCulture);
        return [.. csv.GetRecords<T>()];
    }
}
