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
                Overload(order, circuit),
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
        : new Finding(
            Outcome.Fits,
            "residual current",
            "30 mA (within 300 ms, 40 ms at 5 times) on every circuit that feeds tool or box; "
            + "not on it yet: have it put in first",
            Source.IecResidual);

    private static Finding Overload(Order order, Circuit circuit)
    {
        Protector protector = new(order);
        string why = $"breaker {circuit.Breaker.Amperes:0} A, plug and cord of the box {protector.Weakest.Amperes:0} A";
        if (!protector.IsNeeded)
        {
            return new Finding(Outcome.Fits, "overload", $"{why}: the breaker covers them", Source.Practice);
        }

        string load = $"for {order.BoxCurrent.Amperes:0.0#} A";
        return protector.Rating is not { } rating
            ? new Finding(Outcome.Fails, "overload", $"{why}; none {load} that covers them", Source.Practice)
            : protector.IsFuse
                ? new Finding(Outcome.Fits, "overload", $"{why}: fuse of {rating:0} A in the plug, {load}", circuit.Plug.Source)
            : new Finding(
                Outcome.Fits,
                "overload",
                $"{why}: put a breaker for equipment of {rating:0} A behind the plug, {load}",
                Source.Practice);
    }
}
