using System.Text.Json;
using System.Text.Json.Serialization;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>
/// Reads a value of a day file. What is wrong with it comes as a <see cref="JsonException"/> whose message is the end of a
/// sentence that begins with the member's name.
/// </summary>
/// <typeparam name="T">Type of the value.</typeparam>
internal abstract class ValueConverter<T> : JsonConverter<T>
{
    /// <summary>Not there: nobody writes a day file.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="value">The value.</param>
    /// <param name="options">How.</param>
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
        throw new NotSupportedException();
}
