using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>Residual current, overload and short circuit.</summary>
internal static class ProtectionJudge
{
    /// <summary>Judges.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The section.</returns>
    public static Section Judge(Order order)
    {
        Circuit circuit = order.VacuumCircuit;
        return new Section(
            "Protection",
            [
                Residual(circuit.Supply),
                Overload(order, Protector.OfBox(order), order.IsReadyMade ? order.BoxName : "box", "CB1"),
                .. order.HasHead
                    ? [Overload(order, Protector.OfTool(order), order.IsReadyMade ? order.HeadName : "head", "CB2")]
                    : (Finding[])[],
                order.IsReadyMade ? Adapter : new(
                    Outcome.Fits,
                    "box's own supply",
                    "a slow fuse of 1 A or what its data sheet names, before it, in the line"
                    + (circuit.Supply.IsTwoHot ? "s, both of them hot" : ""),
                    Source.Practice),
            ]);
    }

    private static Finding Residual(Supply supply) => supply.Place == Place.NorthAmerica
        ? new Finding(
            Outcome.Fits,
            "residual current",
            "class A (trips at 4 to 6 mA) on every circuit that feeds tool or box; not on it yet: have it put in first",
            Source.AmericanResidual)
        {
            Condition = "a residual-current device of class A (4 to 6 mA) guards every circuit that feeds tool or box",
        }
        : new Finding(
            Outcome.Fits,
            "residual current",
            "30 mA (within 300 ms, 40 ms at 5 times) on every circuit that feeds tool or box; "
            + "not on it yet: have it put in first",
            Source.IecResidual)
        {
            Condition = "a residual-current device of 30 mA guards every circuit that feeds tool or box",
        };

    private static Finding Adapter => new(
        Outcome.Fits,
        "5 V",
        "from an adapter with two pins and no earth (class II), its output SELV or, in North America, Class 2",
        Source.Adapter)
    {
        Condition = "an approved plug-in adapter, 5 V DC, 1 A or more, of class II, its output SELV or Class 2 (UL 1310)",
    };

    private static Finding Overload(Order order, Protector protector, string place, string part)
    {
        string what = place is "head" or "line splitter" ? "overload, head" : "overload";
        string why = $"breaker {protector.Circuit.Breaker.Amperes:0} A, plug, cord and contact of the {place} "
            + $"{protector.Weakest.Amperes:0} A";
        string load = $"for {protector.Load.Amperes:0.0#} A";
        if (!protector.IsNeeded)
        {
            return new Finding(Outcome.Fits, what, $"{why}: the breaker covers them", Source.Practice);
        }

        if (protector.Rating is not { } rating)
        {
            return new Finding(Outcome.Fails, what, $"{why}; none {load} that covers them", Source.Practice);
        }

        if (protector.IsFuse)
        {
            bool isUsual = rating >= protector.Circuit.Plug.Rating.Amperes;
            return new Finding(
                isUsual ? Outcome.Fits : Outcome.Add,
                what,
                $"{why}: fuse of {rating:0} A in the plug, {load}",
                protector.Circuit.Plug.Source)
            {
                Condition = $"a fuse of {rating:0} A in the {place}'s plug"
                    + (isUsual ? "" : $", in place of the one of {protector.Circuit.Plug.Rating.Amperes:0} A"),
            };
        }

        if (order.IsReadyMade)
        {
            return new Finding(
                Outcome.Fits, what, $"{why}: as it was approved, or by a breaker of its own of {rating:0} A", Source.Practice)
            {
                Condition = $"the {place}'s leaflet allows a circuit of {protector.Circuit.Breaker.Amperes:0} A, or it has a "
                    + $"breaker of its own of {rating:0} A at most",
            };
        }

        return new Finding(
            Outcome.Add,
            what,
            $"{why}: put {part}, a breaker for equipment of {rating:0} A, behind the plug, {load}",
            Source.Practice)
        {
            Condition = $"{part}, a breaker for equipment of {rating:0} A, thermal, in the line behind the {place}'s plug",
        };
    }
}
