using NanoDustSwitch.Simulator.Shop;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>A branch circuit with the plug that goes into it.</summary>
/// <param name="Supply">Its supply.</param>
/// <param name="Breaker">Rating of its breaker.</param>
/// <param name="Curve">Kind of its breaker.</param>
/// <param name="Plug">The plug, and the receptacle for it.</param>
internal sealed record Circuit(Supply Supply, ElectricCurrent Breaker, BreakerCurve Curve, Plug Plug)
{
    /// <summary>
    /// Gets a value indicating whether both wires are switched: everywhere but on a plug that goes in one way only with its
    /// neutral known, as the drawings have it.
    /// </summary>
    public bool IsTwoPole => Supply.Place != Place.NorthAmerica || Supply.IsTwoHot;

    /// <summary>Gets the breaker as it is typed.</summary>
    public string BreakerText => Curve == BreakerCurve.NorthAmerican ? $"{Breaker.Amperes:0}A" : $"{Curve}{Breaker.Amperes:0}";

    /// <summary>Gets the circuit as the vacuum's own is typed.</summary>
    public string TextWithPlug => $"{BreakerText}/{Supply.Volts.Volts:0}V/{Plug.Name}";
}
