using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>How fast and how evenly the board takes its readings.</summary>
/// <param name="Rate">Readings a second.</param>
/// <param name="Jitter">Largest departure of a distance from the mean one, as a part of it, 0 up to 1.</param>
internal sealed record Pace(double Rate, double Jitter)
{
    // Streams 1 to 4 of the seed belong to the shop.
    private const int JitterStream = 5;

    /// <summary>Readings at even distance.</summary>
    /// <param name="rate">Readings a second.</param>
    /// <returns>The pace.</returns>
    public static Pace Ideal(double rate) => new(rate, 0);

    /// <summary>Makes the clock.</summary>
    /// <param name="seed">The shop's seed.</param>
    /// <returns>A clock at time 0.</returns>
    public ReadingClock Clock(long seed) => Jitter > 0
        ? ReadingClock.Jittered(Rate, Jitter, new ShopRandom(seed, JitterStream))
        : ReadingClock.Ideal(Rate);
}
