using System.Text.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads the tools of a day file.</summary>
internal static class ToolReader
{
    private const double MostAmperes = 100;

    private static readonly JsonWords<ToolKind> s_kinds = new(
        ("induction", ToolKind.Induction),
        ("universal", ToolKind.Universal),
        ("soft-start", ToolKind.SoftStart),
        ("phase-chopped", ToolKind.PhaseChopped),
        ("half-wave", ToolKind.HalfWave),
        ("rectified", ToolKind.Rectified),
        ("lamp", ToolKind.Lamp),
        ("charger", ToolKind.Charger));

    private static readonly ToolKind[] s_motors =
        [ToolKind.Induction, ToolKind.Universal, ToolKind.SoftStart, ToolKind.PhaseChopped, ToolKind.HalfWave, ToolKind.Rectified];

    private static readonly ToolKind[] s_surging = [.. Enum.GetValues<ToolKind>().Where(kind => kind != ToolKind.SoftStart)];

    // Members that not every kind has.
    private static readonly (string Member, ToolKind[] Kinds)[] s_special =
    [
        ("inrush", s_surging),
        ("inrushSeconds", s_surging),
        ("brakeMilliseconds", s_motors),
        ("softStartSeconds", [ToolKind.SoftStart]),
        ("conduction", [ToolKind.PhaseChopped]),
        ("pulseMilliseconds", [ToolKind.Rectified, ToolKind.Charger]),
    ];

    /// <summary>Reads all tools.</summary>
    /// <param name="list">The list of tools.</param>
    /// <param name="shop">The shop: its frequency limits a rectifier's pulse to half a cycle, and its circuits have names.</param>
    /// <returns>The tools, by names of their own.</returns>
    public static IReadOnlyList<ToolSpecification> Read(JsonItem list, ShopSpecification shop)
    {
        list.Require(JsonTokenType.StartArray, "'tools'", "a list in brackets");
        if (list.Items.Count == 0)
        {
            throw list.Error("'tools' is empty; a shop has at least one tool");
        }

        List<ToolSpecification> tools = [];
        foreach (JsonItem item in list.Items)
        {
            JsonFields fields = new(
                item,
                "a tool",
                "name",
                "kind",
                "amperes",
                "inrush",
                "inrushSeconds",
                "coastSeconds",
                "standby",
                "brakeMilliseconds",
                "softStartSeconds",
                "conduction",
                "pulseMilliseconds",
                "circuit",
                "toolLine");
            ToolSpecification tool = ReadTool(fields, shop);
            if (tools.Exists(other => other.Name == tool.Name))
            {
                throw fields.Required("name").Error(
                    $"there is already a tool named {JsonSource.Quote(tool.Name)}; give each tool a name of its own");
            }

            tools.Add(tool);
        }

        return tools;
    }

    private static ToolSpecification ReadTool(JsonFields fields, ShopSpecification shop)
    {
        ToolSpecification tool = new()
        {
            Name = fields.Text("name"),
            Kind = fields.Choice("kind", s_kinds),
            RatedAmperes = fields.Number("amperes", 0.01, MostAmperes),
            InrushMultiple = fields.NumberOrNull("inrush", 1, 50),
            InrushSeconds = fields.NumberOrNull("inrushSeconds", 0.001, 10),
            CoastSeconds = fields.NumberOrNull("coastSeconds", 0, 600),
        };

        // Rounded down to a figure that reads well in an error.
        double halfCycle = Math.Floor(50_000 / shop.Hertz) / 100;
        tool.StandbyAmperes = fields.NumberOrNull("standby", 0, MostAmperes) ?? tool.StandbyAmperes;
        tool.BrakeMilliseconds = fields.NumberOrNull("brakeMilliseconds", 0, 60_000) ?? tool.BrakeMilliseconds;
        tool.SoftStartSeconds = fields.NumberOrNull("softStartSeconds", 0, 60) ?? tool.SoftStartSeconds;
        tool.ConductionFraction = fields.NumberOrNull("conduction", 0.1, 1) ?? tool.ConductionFraction;
        tool.PulseMilliseconds = fields.NumberOrNull("pulseMilliseconds", 0.1, halfCycle) ?? tool.PulseMilliseconds;
        tool.CircuitName = fields.Find("circuit") is { } circuit ? CircuitReader.Name(circuit, shop.Circuits) : null;
        tool.IsOnToolLine = fields.BooleanOrNull("toolLine") ?? tool.IsOnToolLine;
        CheckFit(fields, tool.Kind);
        return tool;
    }

    // What a kind does not use would be read and forgotten, and its author would wonder.
    private static void CheckFit(JsonFields fields, ToolKind kind)
    {
        foreach ((string member, ToolKind[] kinds) in s_special)
        {
            if (fields.Find(member) is { } item && !kinds.Contains(kind))
            {
                string others = JsonSource.List(kinds.Select(s_kinds.Word));
                throw item.Error($"'{member}' means nothing to a tool of kind '{fields.Text("kind")}'; it is for {others}");
            }
        }
    }
}
