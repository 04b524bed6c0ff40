using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>A row of the table of single-phase motors.</summary>
/// <param name="Horsepower">Rated horsepower.</param>
/// <param name="Name">The same as a person writes it.</param>
/// <param name="At115">Full-load current at 115 V, A.</param>
/// <param name="At230">Full-load current at 230 V, A.</param>
internal sealed record MotorRating(double Horsepower, string Name, double At115, double At230)
{
    /// <summary>Gives the full-load current.</summary>
    /// <param name="supply">The supply; the table's columns serve 110 to 127 V and 220 to 240 V.</param>
    /// <returns>The current.</returns>
    public ElectricCurrent At(Supply supply) => ElectricCurrent.FromAmperes(supply.Volts.Volts < 200 ? At115 : At230);
}
