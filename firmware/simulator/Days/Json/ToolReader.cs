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

    /// <summary>Reads all tools.</summary>
    /// <param name="list">The list of tools.</param>
    /// <param name="hertz">Frequency of the mains, which limits a rectifier's pulse to half a cycle.</param>
    /// <returns>The tools, by names of their own.</returns>
    public static IReadOnlyList<ToolSpecification> Read(JsonItem list, double hertz)
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
                "pulseMilliseconds");
            ToolSpecification tool = ReadTool(fields, hertz);
            if (tools.Exists(other => other.Name == tool.Name))
            {
                throw fields.Required("name").Error(
                    $"there is already a tool named {JsonSource.Quote(tool.Name)}; give each tool a name of its own");
            }

            tools.Add(tool);
        }

        return tools;
    }

    private static ToolSpecification ReadTool(JsonFields fields, double hertz)
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
        double halfCycle = Math.Floor(50_000 / hertz) / 100;
        tool.StandbyAmperes = fields.NumberOrNull("standby", 0, MostAmperes) ?? tool.StandbyAmperes;
        tool.BrakeMilliseconds = fields.NumberOrNull("brakeMilliseconds", 0, 60_000) ?? tool.BrakeMilliseconds;
        tool.SoftStartSeconds = fields.NumberOrNull("softStartSeconds", 0, 60) ?? tool.SoftStartSeconds;
        tool.ConductionFraction = fields.NumberOrNull("conduction", 0.1, 1) ?? tool.ConductionFraction;
        tool.PulseMilliseconds = fields.NumberOrNull("pulseMilliseconds", 0.1, halfCycle) ?? tool.PulseMilliseconds;
        return tool;
    }
}
