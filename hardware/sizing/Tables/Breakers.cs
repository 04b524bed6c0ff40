using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Sources;

namespace NanoDustSwitch.Sizing.Tables;

/// <summary>
/// The band in which a breaker's magnet trips at once, as multiples of the rated current. IEC 60898-1 from memory; North American
/// breakers have no such band in their standard, and 8 to 16 times is common practice, no source.
/// </summary>
internal static class Breakers
{
    // UL 489 (read), IEC 60898-1 (memory).
    private static readonly (double Multiple, double Seconds)[] s_americanHeat = [(1.35, 3600), (2, 120)];
    private static readonly (double Multiple, double Seconds)[] s_iecHeat = [(1.45, 3600), (2.55, 60)];

    /// <summary>Gives the band of a kind of breaker.</summary>
    /// <param name="curve">Kind of breaker.</param>
    /// <returns>Its band.</returns>
    public static BreakerBand Of(BreakerCurve curve) => curve switch
    {
        BreakerCurve.B => new(3, 5, s_iecHeat, Source.IecBreaker),
        BreakerCurve.C => new(5, 10, s_iecHeat, Source.IecBreaker),
        BreakerCurve.D => new(10, 20, s_iecHeat, Source.IecBreaker),
        _ => new(8, 16, s_americanHeat, Source.Practice),
    };
}
