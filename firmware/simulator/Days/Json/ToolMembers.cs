using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>The members of a tool that not every kind has.</summary>
internal static class ToolMembers
{
    private static readonly ToolKind[] s_motors =
        [.. Enum.GetValues<ToolKind>().Except([ToolKind.Lamp, ToolKind.Charger, ToolKind.Transformer])];

    private static readonly ToolKind[] s_slow = [ToolKind.Inverter, ToolKind.Corrected];
    private static readonly ToolKind[] s_surging = [.. Enum.GetValues<ToolKind>().Except([ToolKind.SoftStart])];

    private static readonly (string Member, ToolKind[] Kinds)[] s_special =
    [
        ("inrush", s_surging),
        ("inrushSeconds", s_surging),
        ("brakeMilliseconds", s_motors),
        ("softStartSeconds", [ToolKind.SoftStart, .. s_slow]),
        ("conduction", [ToolKind.PhaseChopped]),
        ("pulseMilliseconds", [ToolKind.Rectified, ToolKind.Charger, ToolKind.Inverter]),
        ("stageAmperes", [.. s_motors.Except(s_slow)]),
        ("stageSeconds", s_motors),
        ("runsSeconds", [ToolKind.Compressor]),
        ("restsSeconds", [ToolKind.Compressor]),
    ];

    /// <summary>Gives the least start current of a kind that turns at all.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>A multiple of the running current; 1 where nothing is asked, or where 1 means a heater.</returns>
    public static double LeastInrush(ToolKind kind) => kind switch
    {
        ToolKind.Induction or ToolKind.Compressor => ToolEquations.LeastOfInduction,
        ToolKind.Universal => ToolEquations.LeastOfBrushes,
        _ => 1.0,
    };

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
