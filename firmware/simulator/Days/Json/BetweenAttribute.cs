using System.Text.Json.Serialization;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>The range of a number of a day file, or of the length of a text.</summary>
/// <param name="least">Least allowed value.</param>
/// <param name="greatest">Greatest allowed value.</param>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class BetweenAttribute(double least, double greatest) : JsonConverterAttribute
{
    /// <summary>Gets or sets a value indicating whether only whole numbers are allowed.</summary>
    public bool IsWhole { get; set; }

    /// <inheritdoc/>
    public override JsonConverter CreateConverter(Type typeToConvert) => typeToConvert == typeof(string)
        ? new LineConverter((int)least, (int)greatest)
        : new NumberConverter(least, greatest, IsWhole);
}
