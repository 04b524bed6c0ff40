using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Sources;

namespace NanoDustSwitch.Sizing.Tables;

/// <summary>
/// The band in which a breaker's magnet trips at once, as multiples of the rated current. IEC 60898-1 from memory; North American
/// breakers have no such band in their standard, and 8 to 16 times is common practice, no source.
/// </summary>
internal static class Breakers
{
    /// <summary>Gives the least multiple at which it may trip at once.</summary>
    /// <param name="curve">Kind of breaker.</param>
    /// <returns>Multiple of the rated current, rms.</returns>
    public static double From(BreakerCurve curve) =>
        curve switch { BreakerCurve.B => 3, BreakerCurve.C => 5, BreakerCurve.D => 10, _ => 8 };

    /// <summary>Gives the multiple at which it trips at once for certain.</summary>
    /// <param name="curve">Kind of breaker.</param>
    /// <returns>Multiple of the rated current, rms.</returns>
    public static double To(BreakerCurve curve) =>
        curve switch { BreakerCurve.B => 5, BreakerCurve.C => 10, BreakerCurve.D => 20, _ => 16 };

    /// <summary>Gives the limits by which its heat must have tripped it: UL 489 (read), IEC 60898-1 (memory).</summary>
    /// <param name="curve">Kind of breaker.</param>
    /// <returns>Multiples of the rated current and times in s.</returns>
    public static (double Multiple, double Seconds)[] MustTrip(BreakerCurve curve) =>
        curve == BreakerCurve.NorthAmerican ? [(1.35, 3600), (2, 120)] : [(1.45, 3600), (2.55, 60)];

    /// <summary>Gives where the band is from.</summary>
    /// <param name="curve">Kind of breaker.</param>
    /// <returns>The source.</returns>
    public static Source SourceOf(BreakerCurve curve) =>
        curve == BreakerCurve.NorthAmerican ? Source.Practice : Source.IecBreaker;
}
