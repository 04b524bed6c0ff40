using NanoDustSwitch.Sizing.Tables;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>
/// Flux in the transformer's core at a start whose current is fully offset, i = I (e^(-t/T) - cos wt). The core holds the
/// integral of the secondary's voltage: B(t) = I n R (T (1 - e^(-t/T)) - sin(wt) / w) / (N² A), at most
/// I n R (T + 1/w) / (N² A). That the flux itself decays meanwhile, and what the last start left in the core, is not counted.
/// Formula: textbooks of current transformers, the factor 1 + wT of IEC 61869-2; memory.
/// </summary>
/// <param name="peakAmperes">I: peak of the start's current without its offset, A.</param>
/// <param name="turns">n: turns of the wire through the core.</param>
/// <param name="hertz">Frequency; w = 2 pi f.</param>
/// <param name="offsetSeconds">T: the offset's time constant, L/R of the circuit with the motor, s.</param>
internal sealed class CoreFlux(double peakAmperes, int turns, double hertz, double offsetSeconds)
{
    /// <summary>Flux density at which steel is full, T: textbooks, memory. Ferrite is full at 0.35 T.</summary>
    public const double SteelTesla = 1.5;

    /// <summary>Cross section of the core, mm²: common practice for 100 A : 50 mA, no source.</summary>
    public const double AreaSquareMillimeters = 55;

    /// <summary>Resistance of the secondary winding, ohm: as hardware/circuits/transformer.cir has it; common practice.</summary>
    public const double WindingOhms = 100;

    /// <summary>Gets R, burden and winding, ohm.</summary>
    public static double Ohms => SensorModels.BurdenOhms + WindingOhms;

    /// <summary>Gets the greatest flux density that the offset start would need, T.</summary>
    public double Greatest => TeslaASecond * (offsetSeconds + (1 / Omega));

    /// <summary>Gets the flux density without any offset, T: the peak of the alternating part.</summary>
    public double WithoutOffset => TeslaASecond / Omega;

    /// <summary>Gets the time from the start at which steel is full, s; infinite where it never is.</summary>
    public double FullAfter
    {
        get
        {
            const double Step = 1e-4;
            for (double t = 0; t < 10 * offsetSeconds; t += Step)
            {
                if (At(t) >= SteelTesla)
                {
                    return t;
                }
            }

            return double.PositiveInfinity;
        }
    }

    private double Omega => 2 * Math.PI * hertz;

    private double TeslaASecond =>
        peakAmperes * turns * Ohms / (SensorModels.Ratio * SensorModels.Ratio * AreaSquareMillimeters * 1e-6);

    /// <summary>Gives the flux density that is needed at a time, T.</summary>
    /// <param name="seconds">Time from the start, s.</param>
    /// <returns>The flux density, T.</returns>
    public double At(double seconds) => TeslaASecond
        * ((offsetSeconds * (1 - Math.Exp(-seconds / offsetSeconds))) - (Math.Sin(Omega * seconds) / Omega));
}
