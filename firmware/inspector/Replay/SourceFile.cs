using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>Opens a recording: a board's own is known by its header, anything else is a table of readings.</summary>
internal static class SourceFile
{
    private const int LinesLookedAt = 200;
    private const string Header = "record ";

    /// <summary>Opens it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="options">What a person says of a table.</param>
    /// <param name="progress">Takes the part that is done, 0 to 1.</param>
    /// <returns>The recording.</returns>
    public static ReplaySource Open(string path, TableOptions options, Action<double>? progress = null)
    {
        TableFile.Check(path);
        string name = Path.GetFileName(path);
        return TableFile.Guard(path, () => File.ReadLines(path).Take(LinesLookedAt).Any(IsHeader))
            ? TableFile.Guard<ReplaySource>(path, () => BoardRecording.Parse(File.ReadLines(path), path))
            : new TableSource(name, TableReadings.Read(path, options, progress), options.Lead, options.Seed);
    }

    private static bool IsHeader(string line) =>
        line.StartsWith(Header, StringComparison.Ordinal) && line.Contains("nanoDustSwitch", StringComparison.Ordinal);
}
