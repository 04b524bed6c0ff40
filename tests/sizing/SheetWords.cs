using NanoDustSwitch.Drawing.Netlists;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.SizingTests;

/// <summary>What the sheet must ask of each part that is drawn, and what the label must say.</summary>
internal static class SheetWords
{
    // By hardware/README.md, steps 5 to 8. A part that is not here is seen to with the wires: every wire as drawn.
    private static readonly Dictionary<string, string[]> s_wired = new()
    {
        ["X1"] = ["cords pulled", "line to neutral at the plug", "plug to outlets"],
        ["X2"] = ["the head, as above"],
        ["XT"] = ["to tool outlet", "tool outlet's earth off", "outlet tester, tool outlet", "tool outlet alone"],
        ["XV"] = ["to vacuum outlet |", "vacuum outlet's earth off", "vacuum outlet alone"],
        ["XL"] = ["line to neutral contacts", "every wire as drawn"],
        ["PE"] = ["earth unbroken", "lid, studs", "joined, to earth"],
        ["PS1"] = ["joined, to low voltage"],
        ["K1"] = ["relay's coil", "bench: contact opened", "welded contact, drilled"],
        ["T1"] = ["insulation of the transformers", "T1's winding alone", "T1 with burden", "vacuum on: tool's line"],
        ["T2"] = ["T2, where fitted", "T2 with burden"],
        ["J1"] = ["each pin of the head's plug"],
        ["J3"] = ["console's pins"],
        ["H1"] = ["lamp flashes"],
        ["S1"] = ["test: sheet kept"],
    };

    private static readonly Dictionary<string, string[]> s_readyMade = new()
    {
        ["SU1"] = ["SU1: approved", "pin of SU1's plug", "bulb in SU1", "dark within 1 s", "welded contact, drilled"],
        ["SP1"] = ["SP1: approved", "heater in SP1"],
        ["PA1"] = ["PA1's output", "PA1 out and in"],
        ["T1"] = ["T1 on its window", "T1's winding alone", "T1 with burden"],
    };

    // The box itself: barrier, distances, heat, what was claimed.
    private static readonly string[] s_box =
    [
        "each condition of this page", "every wire tugged", "barrier upright", "least distance", "plug out and in: stays off",
        "both come on again", "an hour, both", "no current on the label above those", "label on the box",
    ];

    /// <summary>Gives what must stand on the sheet.</summary>
    /// <param name="order">The order.</param>
    /// <param name="build">Its wiring.</param>
    /// <returns>The words.</returns>
    public static IEnumerable<string> OfSheet(Order order, Build build)
    {
        Dictionary<string, string[]> words = order.IsReadyMade ? s_readyMade : s_wired;
        return build.Parts.Where(part => words.ContainsKey(part.Name)).SelectMany(part => words[part.Name])
            .Concat(order.IsReadyMade ? [] : s_box)
            .Concat(order.IsReadyMade ? [] : order.VacuumCircuit.IsTwoPole ? ["first switched pole", "second switched pole"]
                : (string[])["the switched pole"]);
    }

    /// <summary>Gives what must stand on the label.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The words.</returns>
    public static IEnumerable<string> OfLabel(Order order) =>
    [
        "HOME-MADE. Not tested", "never above what stands behind", "\ntool at most", "\nvacuum at most", "ISOLATES NOTHING",
        "No emergency stop", "\nResidual-current device", "\nBuilt by",
        .. order.HasHead ? (string[])[] : ["\ntool + vacuum together at most"],
    ];
}
