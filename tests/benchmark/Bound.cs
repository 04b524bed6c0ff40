using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace NanoDustSwitch.Benchmarks;

/// <summary>
/// The best that any detector can do: a sine of known frequency and unknown phase in white noise. Its statistic is χ² of two
/// degrees of freedom, which makes the chance of detection a Marcum Q (Kay, Detection Theory; from memory).
/// </summary>
internal static class Bound
{
    /// <summary>Seconds in a year.</summary>
    public const double Year = 365.25 * 24 * 3600;

    private const double Wanted = 0.9;

    /// <summary>Chance of detection.</summary>
    /// <param name="readings">Readings in the window.</param>
    /// <param name="peak">Peak of the sine over the rms of the noise.</param>
    /// <param name="falseAlarm">Chance of a false alarm in a window.</param>
    /// <returns>0 to 1.</returns>
    public static double Detection(double readings, double peak, double falseAlarm) =>
        SpecialFunctions.MarcumQ(1, readings * peak * peak / 4, -Math.Log(falseAlarm));

    /// <summary>Peak over the rms of the noise that is found with a chance.</summary>
    /// <param name="readings">Readings in the window.</param>
    /// <param name="falseAlarm">Chance of a false alarm in a window.</param>
    /// <param name="wanted">Chance of detection.</param>
    /// <returns>The peak.</returns>
    public static double Peak(double readings, double falseAlarm, double wanted = Wanted) =>
        Brent.FindRoot(ratio => Detection(readings, ratio, falseAlarm) - wanted, 1e-6, 40 / Math.Sqrt(readings), 1e-9);

    /// <summary>Smallest rms current that is found with 90 %.</summary>
    /// <param name="readings">Readings in the window.</param>
    /// <param name="falseAlarm">Chance of a false alarm in a window.</param>
    /// <returns>A.</returns>
    public static double Amperes(double readings, double falseAlarm) =>
        Peak(readings, falseAlarm) / Math.Sqrt(2) * Lines.Line.NoiseAmperes;

    /// <summary>Smallest rms current that is found with 90 % in a time, at one false start a year.</summary>
    /// <param name="rate">Readings a second.</param>
    /// <param name="seconds">The time, s; as many windows one after the other make up the year.</param>
    /// <returns>A.</returns>
    public static double AmperesIn(double rate, double seconds) => Amperes(rate * seconds, seconds / Year);
}
