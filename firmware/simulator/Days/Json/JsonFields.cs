using System.Text.Json;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>The members of a JSON object, each known and within its range.</summary>
internal sealed class JsonFields
{
    private const int LongestText = 200;

    private readonly JsonItem _item;
    private readonly string _what;
    private readonly string[] _names;

    /// <summary>Initializes a new instance of the <see cref="JsonFields"/> class.</summary>
    /// <param name="item">The object.</param>
    /// <param name="what">What it is, for errors: "a tool".</param>
    /// <param name="names">Members that it may have.</param>
    public JsonFields(JsonItem item, string what, params string[] names)
    {
        _item = item.Require(JsonTokenType.StartObject, what, "an object in braces");
        _what = what;
        _names = names;
        JsonItem? unknown = item.Names.FirstOrDefault(name => !names.Contains(name.Text, StringComparer.Ordinal));
        if (unknown != null)
        {
            throw unknown.Error(
                $"{what} has no member {JsonSource.Quote(unknown.Text)}; its members are {JsonSource.List(names)}");
        }
    }

    /// <summary>Finds a member.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>Its value, or null where it is not given.</returns>
    public JsonItem? Find(string name)
    {
        for (int i = 0; i < _item.Names.Count; i++)
        {
            if (_item.Names[i].Text == name)
            {
                return _item.Items[i];
            }
        }

        return null;
    }

    /// <summary>Finds a member that has to be there.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>Its value.</returns>
    public JsonItem Required(string name) => Find(name)
        ?? throw _item.Error($"{_what} needs '{name}'; its members are {JsonSource.List(_names)}");

    /// <summary>Reads a number that has to be there.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="least">Least allowed value.</param>
    /// <param name="greatest">Greatest allowed value.</param>
    /// <returns>The number.</returns>
    public double Number(string name, double least, double greatest) => InRange(Required(name), name, least, greatest);

    /// <summary>Reads a number that may be missing.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="least">Least allowed value.</param>
    /// <param name="greatest">Greatest allowed value.</param>
    /// <returns>The number, or null.</returns>
    public double? NumberOrNull(string name, double least, double greatest) =>
        Find(name) is { } item ? InRange(item, name, least, greatest) : null;

    /// <summary>Reads a whole number that may be missing.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="least">Least allowed value.</param>
    /// <param name="greatest">Greatest allowed value.</param>
    /// <returns>The number, or null.</returns>
    public int? WholeOrNull(string name, int least, int greatest)
    {
        double? value = NumberOrNull(name, least, greatest);
        return value == null || value == Math.Floor(value.Value)
            ? (int?)value
            : throw Required(name).Error($"'{name}' must be a whole number, not {value}");
    }

    /// <summary>Reads a yes or no that may be missing.</summary>
    /// <param name="name">Name of the member.</param>
    /// <returns>The answer, or null.</returns>
    public bool? BooleanOrNull(string name) => Find(name) is { } item
        ? item.Type is JsonTokenType.True or JsonTokenType.False
            ? item.Type == JsonTokenType.True
            : throw item.Error($"'{name}' must be true or false, not {item.Kind}")
        : null;

    /// <summary>Reads a text that has to be there.</summary>
    /// <param name="name">Name of the member.</param>
    /// <returns>The text.</returns>
    public string Text(string name) => Line(Required(name), $"'{name}'");

    /// <summary>Reads a text that may be missing.</summary>
    /// <param name="name">Name of the member.</param>
    /// <returns>The text, or null.</returns>
    public string? TextOrNull(string name) => Find(name) is { } item ? Line(item, $"'{name}'") : null;

    /// <summary>Reads one of some words; the member has to be there.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    /// <param name="name">Name of the member.</param>
    /// <param name="words">The words.</param>
    /// <returns>What the word stands for.</returns>
    public T Choice<T>(string name, JsonWords<T> words)
        where T : struct => words.Read(Required(name), name);

    /// <summary>Reads one of some words.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    /// <param name="name">Name of the member.</param>
    /// <param name="words">The words.</param>
    /// <returns>What the word stands for, or null where the member is missing.</returns>
    public T? ChoiceOrNull<T>(string name, JsonWords<T> words)
        where T : struct => Find(name) is { } item ? words.Read(item, name) : null;

    /// <summary>Reads the items of a list.</summary>
    /// <param name="name">Name of the member.</param>
    /// <returns>The items; none where the member is missing.</returns>
    public IReadOnlyList<JsonItem> List(string name) =>
        Find(name)?.Require(JsonTokenType.StartArray, $"'{name}'", "a list in brackets").Items ?? [];

    /// <summary>Checks that an item is one line of text.</summary>
    /// <param name="item">The item.</param>
    /// <param name="name">What it is called in the error.</param>
    /// <returns>The text.</returns>
    public static string Line(JsonItem item, string name)
    {
        string text = item.Require(JsonTokenType.String, name, "a text").Text;
        return text.Length is > 0 and <= LongestText && !text.Any(char.IsControl)
            ? text
            : throw item.Error($"{name} must be one line of 1 to {LongestText} characters, not {JsonSource.Quote(text)}");
    }

    private static double InRange(JsonItem item, string name, double least, double greatest)
    {
        double value = item.Require(JsonTokenType.Number, $"'{name}'", "a number").Number;
        return value >= least && value <= greatest
            ? value
            : throw item.Error($"'{name}' must be from {least} to {greatest}, not {value}");
    }
}
