using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>
/// A board's settings in a text file: a name and a value a line, as they are typed at the console; # begins a remark.
/// </summary>
internal static class SettingsFile
{
    private const string Head = "nanoDustSwitch settings 1";
    private const long Largest = 100_000;
    private const int NameWidth = 18;

    /// <summary>Writes a file.</summary>
    /// <param name="path">Where.</param>
    /// <param name="settings">The settings.</param>
    /// <param name="tools">Lines of the tools.</param>
    /// <param name="port">Where they come from.</param>
    public static void Write(string path, SettingsDraft settings, IEnumerable<string> tools, string port)
    {
        StringBuilder text = new();
        text.Append($"{Head}\n# from {port}, firmware {ProductVersion.Text}, {DateTime.Now:yyyy-MM-dd HH:mm}\n");
        foreach (SettingId id in Enum.GetValues<SettingId>())
        {
            text.Append($"{SettingsTable.Row(id).Name.PadRight(NameWidth)}{FirmwareText.Of(id, settings[id])}\n");
        }

        foreach (string line in tools)
        {
            text.Append($"{line}\n");
        }

        NamedFile.Write(path, text.ToString());
    }

    /// <summary>Reads a file and checks every line.</summary>
    /// <param name="path">Where.</param>
    /// <returns>
    /// The settings, each within its range. What they demand of each other depends on the board's converter and is not checked
    /// yet. And the lines of the tools.
    /// </returns>
    public static (SettingsDraft Settings, string[] Tools) Read(string path)
    {
        string[] lines = Lines(path);
        if (lines.Length == 0 || lines[0].Trim() != Head)
        {
            throw new UserException($"{path} is no backup of settings that this program reads; its first line must be '{Head}'.");
        }

        SettingsDraft settings = new(new SettingValues());
        HashSet<int> seen = [];
        List<string> tools = [];
        for (int i = 1; i < lines.Length; i++)
        {
            string line = lines[i].Split('#')[0].Trim();
            if (ToolLines.IsOne(line))
            {
                ToolLines.Check($"{path} line {i + 1}", line);
                tools.Add(line);
            }
            else if (line.Length > 0)
            {
                TakeLine($"{path} line {i + 1}", line, settings, seen);
            }
        }

        for (int i = 0; i < SettingsTable.Count; i++)
        {
            if (!seen.Contains(i))
            {
                throw new UserException(
                    $"{path} has no line for {SettingsTable.Row((SettingId)i).Name}; all {SettingsTable.Count} settings must be "
                    + "there.");
            }
        }

        return (settings, [.. tools]);
    }

    /// <summary>Reads one line: a name and a value.</summary>
    /// <param name="source">Where it stands, for complaints.</param>
    /// <param name="line">The line, trimmed.</param>
    /// <param name="settings">Where the value goes.</param>
    /// <param name="seen">Numbers of the settings that have been read.</param>
    public static void TakeLine(string source, string line, SettingsDraft settings, HashSet<int> seen)
    {
        string name = line.Split(' ', '\t')[0].ToLowerInvariant();
        string text = line[name.Length..].Trim();
        int row = SettingsTable.Find(name);
        if (row < 0)
        {
            throw new UserException($"{source}: there is no setting '{name}'.");
        }

        if (!seen.Add(row))
        {
            throw new UserException($"{source}: {name} stands there a second time.");
        }

        settings[(SettingId)row] = SettingsOnPc.Read((SettingId)row, text, $"{source}: ");
    }

    private static string[] Lines(string path)
    {
        if (!File.Exists(path))
        {
            throw new UserException($"There is no file {path}.");
        }

        try
        {
            return new FileInfo(path).Length <= Largest
                ? File.ReadAllLines(path)
                : throw new UserException($"{path} is too large for a backup of settings.");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new UserException($"{path} cannot be read: {exception.Message}", exception);
        }
    }
}
