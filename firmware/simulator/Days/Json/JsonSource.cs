using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>The bytes of a JSON file, and what its lines are called in an error.</summary>
/// <param name="name">What the person calls the file.</param>
/// <param name="utf8">The bytes, without byte order mark.</param>
internal sealed class JsonSource(string name, ReadOnlyMemory<byte> utf8)
{
    private const int MostQuoted = 60;
    private const int MostListed = 20;

    /// <summary>Gets what the person calls the file.</summary>
    public string Name => name;

    /// <summary>Gets the folder that the paths in it count from.</summary>
    public string Folder => Path.GetDirectoryName(name) ?? "";

    /// <summary>Gets the bytes.</summary>
    public ReadOnlySpan<byte> Utf8 => utf8.Span;

    /// <summary>Puts a text of unknown origin into quotes: on one line, and not too long.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The quoted text.</returns>
    public static string Quote(string text)
    {
        string shown = text.Length > MostQuoted ? text[..MostQuoted] + "…" : text;
        return "'" + string.Concat(shown.Select(c => char.IsControl(c) ? '·' : c)) + "'";
    }

    /// <summary>Lists what is allowed.</summary>
    /// <param name="words">The words.</param>
    /// <returns>The words with commas between them.</returns>
    public static string List(IEnumerable<string> words)
    {
        string[] all = [.. words];
        string listed = string.Join(", ", all.Take(MostListed));
        return all.Length > MostListed ? listed + ", …" : listed;
    }

    /// <summary>Makes the error of a place.</summary>
    /// <param name="offset">Byte that it is about.</param>
    /// <param name="what">What is wrong and what is allowed; begins small and has no full stop.</param>
    /// <returns>The exception to throw.</returns>
    public UserException Error(long offset, string what) =>
        new($"{name}, line {1 + Utf8[..(int)offset].Count((byte)'\n')}: {what}.");
}
