using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>
/// Where each value of a JSON file stands, by its path as in <see cref="JsonException.Path"/>: <c>$.tools[0].kind</c>.
/// While it looks, it checks which members there are, and of what type: the binding would complain of those too, but in
/// the names of our classes.
/// </summary>
/// <param name="source">The file.</param>
internal sealed class JsonPlaces(JsonSource source)
{
    private readonly Dictionary<string, (long Offset, string What)> _places = [];

    /// <summary>Says what stands at the reader, in a person's words.</summary>
    /// <param name="reader">The reader.</param>
    /// <returns>A few words.</returns>
    public static string Found(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.String => "the text " + JsonSource.Quote(reader.GetString() ?? ""),
        JsonTokenType.Number => "a number",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.StartObject => "an object in braces",
        JsonTokenType.True => "true",
        JsonTokenType.False => "false",
        _ => "null",
    };

    /// <summary>Looks at the value at the reader and all that is in it.</summary>
    /// <param name="reader">The reader.</param>
    /// <param name="path">The value's path.</param>
    /// <param name="what">What it is called in an error.</param>
    /// <param name="info">What it is read into.</param>
    public void Add(ref Utf8JsonReader reader, string path, string what, JsonTypeInfo info)
    {
        _places.Add(path, (reader.TokenStartIndex, what));
        (string words, JsonTokenType[] tokens) = Written(info);

        // Said even where it is not needed: a text with a broken escape shows up here.
        string found = Found(ref reader);
        if (!tokens.Contains(reader.TokenType))
        {
            throw Error(path, $"{what} must be {words}, not {found}");
        }

        if (info.Kind == JsonTypeInfoKind.Object)
        {
            AddMembers(ref reader, path, what, info);
        }
        else if (info.Kind == JsonTypeInfoKind.Enumerable)
        {
            JsonTypeInfo item = JsonBinding.InfoOf(info.Type.GetElementType()!);
            string one = item.Type == typeof(KnowsFields) ? "a tool of 'knows'"
                : item.Kind == JsonTypeInfoKind.Object ? "a " + what.Trim('\'').TrimEnd('s')
                : "a line of " + what;
            for (int i = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
            {
                Add(ref reader, $"{path}[{i}]", one, item);
            }
        }
    }

    /// <summary>Tells whether the file has a value.</summary>
    /// <param name="path">Its path.</param>
    /// <returns>Whether it is there.</returns>
    public bool Has(string path) => _places.ContainsKey(path);

    /// <summary>Checks that an object has what it must have.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="what">What it is called in the error.</param>
    /// <param name="needed">Members that it must have.</param>
    /// <param name="allowed">Members that it may have.</param>
    public void Require(string path, string what, IEnumerable<string> needed, IEnumerable<string> allowed)
    {
        if (needed.FirstOrDefault(member => !Has($"{path}.{member}")) is { } missing)
        {
            throw Error(path, $"{what} needs '{missing}'; its members are {JsonSource.List(allowed)}");
        }
    }

    /// <summary>Says that an object has no such member.</summary>
    /// <param name="what">What the object is called.</param>
    /// <param name="member">The member.</param>
    /// <param name="allowed">Members that it may have.</param>
    /// <returns>The sentence.</returns>
    public static string HasNo(string what, string member, IEnumerable<string> allowed) =>
        $"{what} has no member {JsonSource.Quote(member)}; its members are {JsonSource.List(allowed)}";

    /// <summary>Makes the error of a value.</summary>
    /// <param name="path">The value's path.</param>
    /// <param name="sentence">What is wrong and what is allowed; begins small and has no full stop.</param>
    /// <returns>The exception to throw.</returns>
    public UserException Error(string path, string sentence) => source.Error(_places[path].Offset, sentence);

    /// <summary>Makes the error of a value whose converter knows it, but not what it is called.</summary>
    /// <param name="exception">The converter's.</param>
    /// <returns>The exception to throw.</returns>
    public UserException Error(JsonException exception) =>
        Error(exception.Path!, $"{_places[exception.Path!].What} {exception.Message}");

    // How a value of a type is written.
    private static (string Words, JsonTokenType[] Tokens) Written(JsonTypeInfo info) => info.Kind switch
    {
        JsonTypeInfoKind.Object => ("an object in braces", [JsonTokenType.StartObject]),
        JsonTypeInfoKind.Enumerable => ("a list in brackets", [JsonTokenType.StartArray]),
        _ when info.Type == typeof(double) => ("a number", [JsonTokenType.Number]),
        _ when info.Type == typeof(bool) => ("true or false", [JsonTokenType.True, JsonTokenType.False]),
        _ when info.Type == typeof(ClockTime) => (ClockTime.Allowed, [JsonTokenType.Number, JsonTokenType.String]),
        _ => ("a text", [JsonTokenType.String]),
    };

    private void AddMembers(ref Utf8JsonReader reader, string path, string what, JsonTypeInfo info)
    {
        string[] names = [.. info.Properties.Select(member => member.Name)];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string name = reader.GetString() ?? "";
            JsonPropertyInfo member = info.Properties.FirstOrDefault(one => one.Name == name)
                ?? throw source.Error(reader.TokenStartIndex, HasNo(what, name, names));
            if (Has($"{path}.{name}"))
            {
                throw source.Error(reader.TokenStartIndex, $"'{name}' is given twice in the same braces; leave one of them");
            }

            reader.Read();
            Add(ref reader, $"{path}.{name}", $"'{name}'", JsonBinding.InfoOf(member.PropertyType));
        }

        Require(path, what, info.Properties.Where(member => member.IsRequired).Select(member => member.Name), names);
    }
}
