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
                Overload(Protector.OfBox(order), "box", "CB1"),
                .. order.HasHead ? [Overload(Protector.OfTool(order), "head", "CB2")] : (Finding[])[],
                new(
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

    private static Finding Overload(Protector protector, string place, string part)
    {
        string what = place == "box" ? "overload" : "overload, head";
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
