using NanoDustSwitch.Drawing.Netlists;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Building;

/// <summary>The wiring of an order: the netlist of hardware/wiring that is for it, with this order's parts and ratings.</summary>
internal static class OrderDrawing
{
    /// <summary>Gives the name of the netlist that an order is drawn from.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The name, without its ending.</returns>
    public static string NetlistOf(Order order) => order.IsReadyMade ? "ready-made"
        : (order.HasHead, order.ToolCircuit.Supply) switch
        {
            (true, { IsTwoHot: true }) => "two-circuits-two-hot",
            (true, { Place: Place.NorthAmerica }) => "two-circuits-120",
            (true, _) => "two-circuits-230",
            (false, { IsTwoHot: true }) => "one-circuit-two-hot-240",
            (false, { Place: Place.NorthAmerica }) => "one-circuit-120",
            _ => "one-circuit-230",
        };

    /// <summary>Draws up the wiring.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The build.</returns>
    public static Build Of(Order order)
    {
        Build build = Build.Parse(Resource.Text(NetlistOf(order) + ".json"));
        build = order.HasContactor ? Contactor.In(build) : build;
        if (!order.IsReadyMade)
        {
            build = Ratings.IsBreaker(Protector.OfBox(order)) ? build : Without(build, "CB1");
            build = order.HasHead && !Ratings.IsBreaker(Protector.OfTool(order)) ? Without(build, "CB2") : build;
        }

        Dictionary<string, string> ratings = Ratings.Of(order);
        string wires = order.IsReadyMade ? "" : $"; wires {Ratings.MainsWire(order.VacuumCircuit)} or thicker";
        return build with
        {
            Title = TitleOf(order),
            Notes = [build.Notes[^1], "Drawn for this order. Nobody has built it. A second person compares it, wire by wire."],
            Parts =
            [
                .. build.Parts.Select(part => part with { Text = ratings.GetValueOrDefault(part.Name, part.Text) }),
            ],
            Zones =
            [
                .. build.Zones.Select(zone => zone is { Kind: "mains" } && zone.Text.EndsWith("mains", StringComparison.Ordinal)
                    ? zone with { Text = zone.Text + wires } : zone),
            ],
        };
    }

    private static string TitleOf(Order order)
    {
        string circuits = !order.HasHead ? "one circuit" : order.IsSameCircuit ? "a plug each on one circuit" : "two circuits";
        return $"Vacuum {order.Vacuum.Nameplate}, tool {order.Tool.Nameplate}, {circuits}, {order.ToolCircuit.Supply}"
            + (order.IsReadyMade ? ", no mains wiring" : "") + (order.HasContactor ? ", with a contactor" : "");
    }

    // Where it is not asked for, the two wires at it are one.
    private static Build Without(Build build, string name)
    {
        Wire before = build.Wires.Single(wire => wire.To == $"{name}.1");
        Wire behind = build.Wires.Single(wire => wire.From == $"{name}.2");
        return build with
        {
            Parts = [.. build.Parts.Where(part => part.Name != name)],
            Wires = [.. build.Wires.Where(wire => wire != before && wire != behind), behind with { From = before.From }],
        };
    }
}
