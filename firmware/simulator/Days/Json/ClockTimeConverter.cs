using System.Text.Json;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads a time.</summary>
internal sealed class ClockTimeConverter : ValueConverter<ClockTime>
{
    /// <inheritdoc/>
    public override ClockTime Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        double seconds = reader.TokenType == JsonTokenType.Number
            ? reader.GetDouble()
            : ClockTime.FromText(reader.GetString() ?? "")
                ?? throw new JsonException($"must be {ClockTime.Allowed}, not {JsonPlaces.Found(ref reader)}");
        return seconds is >= 0 and <= ClockTime.Longest
            ? new ClockTime(seconds)
            : throw new JsonException($"must be from 0 to {ClockTime.Longest} seconds (24 hours), not {seconds}");
    }
}
