using System.Text.Json;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads a number within its range.</summary>
/// <param name="least">Least allowed value.</param>
/// <param name="greatest">Greatest allowed value.</param>
/// <param name="isWhole">Whether it has to be a whole number.</param>
internal sealed class NumberConverter(double least, double greatest, bool isWhole) : ValueConverter<double>
{
    /// <summary>Says what is wrong with a number.</summary>
    /// <param name="least">Least allowed value.</param>
    /// <param name="greatest">Greatest allowed value.</param>
    /// <param name="value">The number.</param>
    /// <returns>The end of a sentence that begins with the member's name.</returns>
    public static string Outside(double least, double greatest, double value) =>
        $"must be from {least} to {greatest}, not {value}";

    /// <inheritdoc/>
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        double value = reader.GetDouble();
        return value < least || value > greatest ? throw new JsonException(Outside(least, greatest, value))
            : isWhole && value != Math.Floor(value) ? throw new JsonException($"must be a whole number, not {value}")
            : value;
    }
}
