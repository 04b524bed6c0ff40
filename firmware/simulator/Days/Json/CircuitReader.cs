using System.Text.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads the circuits of a day file, and the names of circuits.</summary>
internal static class CircuitReader
{
    private static readonly JsonWords<BreakerCurve> s_curves = new(
        ("north-american", BreakerCurve.NorthAmerican),
        ("b", BreakerCurve.B),
        ("c", BreakerCurve.C),
        ("d", BreakerCurve.D));

    /// <summary>Reads all circuits.</summary>
    /// <param name="list">The list of circuits.</param>
    /// <returns>The circuits, by names of their own; the first feeds all that names no other.</returns>
    public static IReadOnlyList<CircuitSpecification> Read(JsonItem list)
    {
        list.Require(JsonTokenType.StartArray, "'circuits'", "a list in brackets");
        if (list.Items.Count == 0)
        {
            throw list.Error("'circuits' is empty; a shop has at least one circuit");
        }

        List<CircuitSpecification> circuits = [];
        foreach (JsonItem item in list.Items)
        {
            JsonFields fields = new(item, "a circuit", "name", "amperes", "curve");
            CircuitSpecification circuit = new() { Name = fields.Text("name") };
            circuit.Amperes = fields.NumberOrNull("amperes", 0.1, 1000) ?? circuit.Amperes;
            circuit.Curve = fields.ChoiceOrNull("curve", s_curves) ?? circuit.Curve;
            if (circuits.Exists(other => other.Name == circuit.Name))
            {
                throw fields.Required("name").Error(
                    $"there is already a circuit named {JsonSource.Quote(circuit.Name)}; give each circuit a name of its own");
            }

            circuits.Add(circuit);
        }

        return circuits;
    }

    /// <summary>Reads the name of a circuit.</summary>
    /// <param name="item">The item.</param>
    /// <param name="circuits">The circuits there are.</param>
    /// <returns>The name.</returns>
    public static string Name(JsonItem item, IReadOnlyList<CircuitSpecification> circuits)
    {
        string name = JsonFields.Line(item, "'circuit'");
        return circuits.Any(circuit => circuit.Name == name)
            ? name
            : throw item.Error(
                $"there is no circuit {JsonSource.Quote(name)}; the circuits are {JsonSource.List(circuits.Select(circuit => circuit.Name))}");
    }
}
