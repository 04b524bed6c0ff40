using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>The members of a tool that not every kind has.</summary>
internal static class ToolMembers
{
    private static readonly ToolKind[] s_motors = [.. Enum.GetValues<ToolKind>().Except([ToolKind.Lamp, ToolKind.Charger])];
    private static readonly ToolKind[] s_surging = [.. Enum.GetValues<ToolKind>().Except([ToolKind.SoftStart])];

    private static readonly (string Member, ToolKind[] Kinds)[] s_special =
    [
        ("inrush", s_surging),
        ("inrushSeconds", s_surging),
        ("brakeMilliseconds", s_motors),
        ("softStartSeconds", [ToolKind.SoftStart]),
        ("conduction", [ToolKind.PhaseChopped]),
        ("pulseMilliseconds", [ToolKind.Rectified, ToolKind.Charger]),
    ];

    /// <summary>Refuses what a kind does not use: it would be read and forgotten, and its author would wonder.</summary>
    /// <param name="places">The file.</param>
    /// <param name="path">The tool's path.</param>
    /// <param name="kind">Its kind.</param>
    public static void Check(JsonPlaces places, string path, ToolKind kind)
    {
        foreach ((string member, ToolKind[] kinds) in s_special)
        {
            if (places.Has($"{path}.{member}") && !kinds.Contains(kind))
            {
                string word = WordConverter<ToolKind>.Word(kind);
                string others = JsonSource.List(kinds.Select(WordConverter<ToolKind>.Word));
                throw places.Error(
                    $"{path}.{member}", $"'{member}' means nothing to a tool of kind '{word}'; it is for {others}");
            }
        }
    }
}
