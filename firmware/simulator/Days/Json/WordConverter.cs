using System.Text.Json;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads a word of a day file: the name of an enumeration's member as <c>soft-start</c>.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
/// <param name="others">Members that a day file cannot name.</param>
internal sealed class WordConverter<T>(params T[] others) : ValueConverter<T>
    where T : struct, Enum
{
    private readonly Dictionary<string, T> _words = Enum.GetValues<T>().Except(others).ToDictionary(Word);

    /// <summary>Gives the word.</summary>
    /// <param name="value">What it stands for.</param>
    /// <returns>The word.</returns>
    public static string Word(T value) => JsonNamingPolicy.KebabCaseLower.ConvertName($"{value}");

    /// <inheritdoc/>
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        string text = reader.GetString() ?? "";
        return _words.TryGetValue(text, out T value)
            ? value
            : throw new JsonException($"must be one of {JsonSource.List(_words.Keys)}, not {JsonSource.Quote(text)}");
    }
}
