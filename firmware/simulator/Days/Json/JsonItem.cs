using System.Text.Json;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>A value of a JSON file that knows where it stands.</summary>
/// <param name="Source">The file.</param>
/// <param name="Offset">Its first byte.</param>
/// <param name="Type">Its token: a number, a string, a start of an object or of an array, and so on.</param>
internal sealed record JsonItem(JsonSource Source, long Offset, JsonTokenType Type)
{
    /// <summary>Gets the text of a string.</summary>
    public string Text { get; init; } = "";

    /// <summary>Gets the value of a number.</summary>
    public double Number { get; init; }

    /// <summary>Gets the items of an array, or the values of an object's members.</summary>
    public IReadOnlyList<JsonItem> Items { get; init; } = [];

    /// <summary>Gets the names of an object's members, as many as there are items.</summary>
    public IReadOnlyList<JsonItem> Names { get; init; } = [];

    /// <summary>Gets what it is, in a person's words.</summary>
    public string Kind => Type switch
    {
        JsonTokenType.Number => "a number",
        JsonTokenType.String => "the text " + JsonSource.Quote(Text),
        JsonTokenType.StartArray => "a list",
        JsonTokenType.StartObject => "an object in braces",
        JsonTokenType.True => "true",
        JsonTokenType.False => "false",
        _ => "null",
    };

    /// <summary>Checks that it is of a type.</summary>
    /// <param name="type">The type.</param>
    /// <param name="name">What it is called in the error.</param>
    /// <param name="words">The type in a person's words.</param>
    /// <returns>The item itself.</returns>
    public JsonItem Require(JsonTokenType type, string name, string words) =>
        Type == type ? this : throw Error($"{name} must be {words}, not {Kind}");

    /// <summary>Makes the error of this place.</summary>
    /// <param name="what">What is wrong and what is allowed; begins small and has no full stop.</param>
    /// <returns>The exception to throw.</returns>
    public UserException Error(string what) => Source.Error(Offset, what);
}
