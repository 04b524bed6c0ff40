using System.Text.Json;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads a text of one line.</summary>
/// <param name="shortest">Least number of characters.</param>
/// <param name="longest">Greatest number of characters.</param>
internal sealed class LineConverter(int shortest, int longest) : ValueConverter<string>
{
    /// <inheritdoc/>
    public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        string text = reader.GetString() ?? "";
        return text.Length >= shortest && text.Length <= longest && !text.Any(char.IsControl)
            ? text
            : throw new JsonException($"must be one line of {shortest} to {longest} characters, not {JsonSource.Quote(text)}");
    }
}
