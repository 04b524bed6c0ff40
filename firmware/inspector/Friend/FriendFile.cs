using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Friend;

/// <summary>
/// One text file with all that somebody far away needs to help: a part for each console word with the board's answer, the sheet
/// of <c>test</c>, and a recording. A line of two equals signs and a name begins a part.
/// </summary>
internal static class FriendFile
{
    /// <summary>The part with the sheet.</summary>
    public const string Sheet = "test";

    /// <summary>The part with the recording.</summary>
    public const string Recording = "record";

    private const string Head = "nanoDustSwitch for a friend 1";
    private const string Mark = "== ";
    private const long Largest = 50_000_000;
    private static readonly string[] s_words = ["about", "why", "status", "details", "settings", "tools", "events"];

    /// <summary>Asks a board for everything, and writes it.</summary>
    /// <param name="port">The port.</param>
    /// <param name="path">The file.</param>
    /// <param name="sheet">A file with the sheet that <c>test</c> has printed; null for none.</param>
    /// <param name="length">How long to record.</param>
    /// <param name="progress">Takes the part that is done, 0 to 1.</param>
    public static void Write(string port, string path, string? sheet, TimeSpan length, Action<double> progress)
    {
        NamedFile.Check(path);
        List<string> lines = [Head, $"# {DateTime.Now:yyyy-MM-dd HH:mm}"];
        if (sheet is not null)
        {
            lines.AddRange([Mark + Sheet, .. ReadLines(sheet)]);
        }

        using (BoardConsole console = BoardConsole.Connect(port))
        {
            foreach (string word in s_words)
            {
                // A firmware without a word says so.
                IReadOnlyList<string> answer = console.Ask(word);
                lines.AddRange(answer.Count == 1 && answer[0].StartsWith("There is no '", StringComparison.Ordinal)
                    ? []
                    : [Mark + word, .. answer]);
            }
        }

        string recording = Path.GetTempFileName();
        try
        {
            RecordSession.Run(port, recording, length, progress);
            NamedFile.Write(path, string.Join('\n', [.. lines, Mark + Recording, .. File.ReadLines(recording), ""]));
        }
        finally
        {
            File.Delete(recording);
        }
    }

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The lines of each part.</returns>
    public static Dictionary<string, List<string>> Read(string path)
    {
        string[] lines = ReadLines(path);
        if (lines.Length == 0 || lines[0] != Head)
        {
            throw new UserException($"{path} is no file of 'collect'; its first line must be '{Head}'.");
        }

        Dictionary<string, List<string>> parts = [];
        List<string> part = [];
        foreach (string line in lines.Skip(1))
        {
            if (line.StartsWith(Mark, StringComparison.Ordinal))
            {
                part = parts[line[Mark.Length..].Trim()] = [];
            }
            else
            {
                part.Add(line);
            }
        }

        return parts;
    }

    private static string[] ReadLines(string path)
    {
        if (!File.Exists(path))
        {
            throw new UserException($"There is no file {path}.");
        }

        try
        {
            return new FileInfo(path).Length <= Largest
                ? File.ReadAllLines(path)
                : throw new UserException($"{path} is too large; 50 MB are the most.");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new UserException($"{path} cannot be read: {exception.Message}", exception);
        }
    }
}
