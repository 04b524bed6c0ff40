using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Report;

/// <summary>Writes a page to a file.</summary>
internal static class ReportFile
{
    /// <summary>Writes it, and makes its folder where there is none.</summary>
    /// <param name="path">The file.</param>
    /// <param name="page">The page.</param>
    public static void Save(string path, ReportPage page)
    {
        try
        {
            if (Directory.Exists(path))
            {
                throw new UserException($"'{path}' is a folder; name an HTML file in it.");
            }

            if (Path.GetDirectoryName(path) is { Length: > 0 } folder)
            {
                Directory.CreateDirectory(folder);
            }

            File.WriteAllText(path, page.ToString());
        }
        catch (Exception exception) when (
            exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new UserException($"The report cannot be written to '{path}': {exception.Message}", exception);
        }

        Console.WriteLine($"report: {path}");
    }
}
