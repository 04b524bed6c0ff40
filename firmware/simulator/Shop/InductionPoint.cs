using System.Runtime.InteropServices;

namespace NanoDustSwitch.Simulator.Shop;

/// <summary>What an induction motor draws and gives at a speed, at nominal voltage, per unit of rated current.</summary>
/// <param name="InPhase">Current in step with the voltage.</param>
/// <param name="Across">Current a quarter cycle ahead; below 0, for it lags.</param>
/// <param name="Torque">Torque.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct InductionPoint(double InPhase, double Across, double Torque)
{
    /// <summary>Gets the height of the current, rms.</summary>
    public double Amperes => Math.Sqrt((InPhase * InPhase) + (Across * Across));

    /// <summary>Goes a part of the way to another point.</summary>
    /// <param name="other">The other.</param>
    /// <param name="part">How far, 0 to 1.</param>
    /// <returns>The point there.</returns>
    public InductionPoint Towards(in InductionPoint other, double part) => new(
        InPhase + ((other.InPhase - InPhase) * part),
        Across + ((other.Across - Across) * part),
        Torque + ((other.Torque - Torque) * part));
}
