using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>A mains supply.</summary>
/// <param name="Volts">Its voltage.</param>
/// <param name="Frequency">Its frequency.</param>
internal sealed record Supply(ElectricPotential Volts, Frequency Frequency)
{
    /// <summary>Gets whose rules go with it.</summary>
    public Place Place => Volts.Volts < 110 ? Place.Japan
        : Volts.Volts < 200 || IsTwoHot ? Place.NorthAmerica
        : Place.Elsewhere;

    /// <summary>Gets a value indicating whether both of its wires are hot.</summary>
    public bool IsTwoHot => Volts.Volts >= 240 && Frequency.Hertz >= 60;

    /// <inheritdoc/>
    public override string ToString() => $"{Volts.Volts:0} V, {Frequency.Hertz:0} Hz{(IsTwoHot ? ", two hot wires" : "")}";
}
