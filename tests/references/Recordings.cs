using System.Globalization;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>Open recordings that the project does not carry; their folder is named by the variable DUST_RECORDINGS.</summary>
internal static class Recordings
{
    /// <summary>Gives a folder of recordings, or ends the test as skipped.</summary>
    /// <param name="name">Name of the folder.</param>
    /// <returns>Its path.</returns>
    public static string Folder(string name)
    {
        string? root = Environment.GetEnvironmentVariable("DUST_RECORDINGS");
        string path = Path.Combine(root ?? "", name);
        if (string.IsNullOrEmpty(root) || !Directory.Exists(path))
        {
            Assert.Inconclusive($"the recordings {name} are not here; DUST_RECORDINGS names their folder");
        }

        return path;
    }

    /// <summary>Reads a table of numbers without a header.</summary>
    /// <param name="path">The file.</param>
    /// <returns>Its columns.</returns>
    public static double[][] Columns(string path)
    {
        double[][] rows =
        [
            .. File.ReadLines(path)
                .Select(line => line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray()),
        ];
        return [.. Enumerable.Range(0, rows[0].Length).Select(column => rows.Select(row => row[column]).ToArray())];
    }
}
