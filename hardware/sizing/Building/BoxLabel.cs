using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Building;

/// <summary>The label of an order's box; its amperes are those that were tested, and never above these.</summary>
internal static class BoxLabel
{
    private const string Blank = "______";

    /// <summary>Gives the lines.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The lines.</returns>
    public static IEnumerable<string> Of(Order order)
    {
        yield return "HOME-MADE. Not tested or approved by anybody.";
        yield return $"{order.VacuumCircuit.Supply}   all A: as tested, never above what stands behind";
        if (!order.HasHead)
        {
            yield return $"tool + vacuum together at most {Amperes(Limit(order, 0))}";
        }

        yield return $"tool at most {Amperes(Limit(order, 0))}, {Ratings.Volts(order.ToolCircuit)}, "
            + $"{Behind(order, Protector.OfTool(order))}";
        yield return $"vacuum at most {Amperes(Limit(order, order.HasHead ? 1 : 0))}, motor {SwitchJudge.MotorRating(order)}, "
            + Behind(order, Protector.OfBox(order));
        yield return "STARTS BY ITSELF. ISOLATES NOTHING: unplug first.";
        yield return "No emergency stop. Indoors, dry, never unattended.";
        yield return $"Residual-current device {ResidualCurrent(order)} before it.";
        yield return $"Built by {Blank} on {Blank}   checked by {Blank} on {Blank}   next check {Blank}";
    }

    /// <summary>Gives the most that an outlet may carry: the load's limit, or the protector where that is less.</summary>
    /// <param name="order">The order.</param>
    /// <param name="load">0 for the tool, or all of one plug; 1 for the vacuum on a plug of its own.</param>
    /// <returns>The current, A.</returns>
    public static double Limit(Order order, int load)
    {
        Protector protector = load == 0 ? Protector.OfTool(order) : Protector.OfBox(order);
        return Math.Min(CircuitLoad.Of(order)[load].Limit.Amperes, protector.LetsThrough);
    }

    /// <summary>Names the residual-current device.</summary>
    /// <param name="order">The order.</param>
    /// <returns>Its kind.</returns>
    public static string ResidualCurrent(Order order) =>
        order.ToolCircuit.Supply.Place == Place.NorthAmerica ? "of class A (4 to 6 mA)" : "of 30 mA";

    private static string Amperes(double limit) => $"{Blank} A ({limit:0.#} A)";

    private static string Behind(Order order, Protector protector) =>
        $"plugged in behind a breaker of {protector.Circuit.BreakerText}"
        + (protector.IsFuse ? $", fuse of {protector.Rating:0} A in the plug"
            : protector.IsNeeded && !order.IsReadyMade ? $", breaker for equipment of {protector.Rating:0} A" : "");
}
