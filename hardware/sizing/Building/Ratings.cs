using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Building;

/// <summary>What the parts of an order must be rated for: what the drawing, the list and the label say of each.</summary>
internal static class Ratings
{
    // Wire of a branch circuit, NEC 210.19 and 240.4(D) (memory); elsewhere what is used for 16 and 20 A (common practice).
    private const string ThinWire = "14 AWG";
    private const string Wire = "12 AWG";
    private const string MetricWire = "2.5 mm²";
    private const double ThinWiresBreaker = 15;

    /// <summary>Gives them by the part's name; a part that is alike in every order is not among them.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The ratings.</returns>
    public static Dictionary<string, string> Of(Order order)
    {
        Dictionary<string, string> ratings = new() { ["T1"] = Turns(order) };
        if (order.IsReadyMade)
        {
            ratings["SU1"] = $"{SwitchJudge.MotorRating(order)}, carries {Carries(order)} A, input 5 V DC";
            ratings["SP1"] = $"{Volts(order.ToolCircuit)}, {order.ToolCircuit.Plug.Rating.Amperes:0} A";
            ratings["SP2"] = $"{Volts(order.VacuumCircuit)}, {order.VacuumCircuit.Plug.Rating.Amperes:0} A";
            ratings["PA1"] = "adapter 5 V, 1 A, class II";
            return ratings;
        }

        string contact = $"{Poles(order)}: {SwitchJudge.MotorRating(order)}, carries {Carries(order)} A";
        ratings["X1"] = Plug(order.VacuumCircuit, order, CordUse.Box, Protector.OfBox(order));
        ratings["XV"] = $"socket {order.VacuumCircuit.Plug.Name}, cord {Thinnest(order, CordUse.Box)}";
        CordUse before = order.HasHead ? CordUse.Head : CordUse.Box;
        ratings["XT"] = $"socket {order.ToolCircuit.Plug.Name}, cord {Thinnest(order, before)}";
        ratings["K1"] = order.HasContactor ? "one pole, pilot duty (C300) or AC-15: KM's coil" : contact;
        ratings["KM"] = contact;
        ratings["mains wire"] = $"{MainsWire(order.VacuumCircuit)} or thicker";
        if (order.HasHead)
        {
            ratings["X2"] = Plug(order.ToolCircuit, order, CordUse.Head, Protector.OfTool(order));
            ratings["CB2"] = Breaker(Protector.OfTool(order));
        }

        ratings["CB1"] = Breaker(Protector.OfBox(order));
        return ratings;
    }

    /// <summary>Gives the size of the wires of a circuit in the box.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <returns>The size.</returns>
    public static string MainsWire(Circuit circuit) => circuit.Supply.Place != Place.NorthAmerica ? MetricWire
        : circuit.Breaker.Amperes <= ThinWiresBreaker ? ThinWire : Wire;

    /// <summary>Tells how many poles the vacuum's contact has.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The words.</returns>
    public static string Poles(Order order) => order.VacuumCircuit.IsTwoPole ? "two poles" : "one pole";

    /// <summary>Tells whether a breaker for equipment is fitted: where one is asked for that is no fuse of the plug.</summary>
    /// <param name="protector">The protector.</param>
    /// <returns>True if it is.</returns>
    public static bool IsBreaker(Protector protector) => protector is { IsNeeded: true, IsFuse: false };

    /// <summary>Gives a supply in a few letters.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <returns>Its voltage.</returns>
    public static string Volts(Circuit circuit) => $"{circuit.Supply.Volts.Volts:0} V";

    private static string Carries(Order order) => $"{Protector.OfBox(order).LetsThrough:0}";

    private static string Breaker(Protector protector) => $"{protector.Rating:0} A, 250 V, thermal";

    private static string Plug(Circuit circuit, Order order, CordUse use, Protector protector) =>
        $"plug {circuit.Plug.Name}{(protector.IsFuse ? $" with fuse {protector.Rating:0} A" : "")}, cord {Thinnest(order, use)}";

    private static string Thinnest(Order order, CordUse use) =>
        order.Cords.Where(cord => cord.Use == use).MinBy(cord => cord.Size.Ampacity)!.Size.Name;

    private static string Turns(Order order) => order.IsReadyMade ? $"one that opens, on the window x{order.Turns}"
        : order.Turns > 1 ? $"tool's wire, {order.Turns} turns" : "tool's wire, once";
}
