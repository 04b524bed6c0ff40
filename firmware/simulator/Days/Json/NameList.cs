namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>The names of a day file's tools, or of its circuits, that other members refer to.</summary>
internal sealed class NameList
{
    private readonly JsonPlaces _places;
    private readonly string _one;
    private readonly string[] _names;

    /// <summary>Initializes a new instance of the <see cref="NameList"/> class.</summary>
    /// <param name="places">Where they stand.</param>
    /// <param name="one">What one of them is called; the list's member is called the same with an s.</param>
    /// <param name="names">The names, in the order of the file.</param>
    public NameList(JsonPlaces places, string one, string[] names)
    {
        _places = places;
        _one = one;
        _names = names;
        if (names.Length == 0)
        {
            throw places.Error($"$.{one}s", $"'{one}s' is empty; a shop has at least one {one}");
        }

        HashSet<string> known = [];
        int second = Array.FindIndex(names, name => !known.Add(name));
        if (second >= 0)
        {
            throw places.Error(
                $"$.{one}s[{second}].name",
                $"there is already a {one} named {JsonSource.Quote(names[second])}; give each {one} a name of its own");
        }
    }

    /// <summary>Checks that a name is one of them.</summary>
    /// <param name="path">Where it stands.</param>
    /// <param name="name">The name; null where none is given.</param>
    public void Check(string path, string? name)
    {
        if (name != null && !_names.Contains(name))
        {
            throw _places.Error(
                path, $"there is no {_one} {JsonSource.Quote(name)}; the {_one}s are {JsonSource.List(_names)}");
        }
    }
}
