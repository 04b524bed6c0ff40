using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Building;

/// <summary>The tools that an order takes.</summary>
internal static class ToolList
{
    private static readonly string[] s_always =
    [
        "soldering iron, side cutters, wire stripper; a drill and the bits for box or case",
        "meter: ohms down to a tenth, 20 MΩ, DC volts",
        "isolated serial adapter, 3.3 V, and a USB cable with data lines for the board",
        "outlet tester of your country",
        "filament or halogen bulb of 60 to 100 W in a holder with a plug; fan heater of 1 kW or more with a thermal cut-out",
        "something that measures warmth to a few degrees; a watch; a second person",
    ];

    private static readonly string[] s_wired =
    [
        "crimping tool for ferrules and one for ring lugs, each the maker's for them",
        "torque screwdriver for the terminals, as their data sheets say",
        "insulation tester, 500 V DC, or somebody who has one",
        "caliper; printer for barrier, cradle and holder, or somebody who has one",
        "a 10 kg weight, to pull at the cords; two heaters that make the label's currents",
        "extinguisher for electrical fires",
    ];

    /// <summary>Gives them.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The tools.</returns>
    public static IEnumerable<string> Of(Order order) => order.IsReadyMade ? s_always : [.. s_always, .. s_wired];
}
