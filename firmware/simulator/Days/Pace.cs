using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>How fast and how evenly the board takes its readings.</summary>
/// <param name="Rate">Readings a second; a board with a time of its own reads as fast as it can.</param>
/// <param name="Jitter">Largest departure of a distance from the mean one, as a part of it, 0 up to 1.</param>
/// <param name="Costs">What the firmware's work costs the board; null where it takes no time.</param>
internal sealed record Pace(double Rate, double Jitter, BoardCosts? Costs = null)
{
    // Streams 1 to 4 of the seed belong to the shop.
    private const int JitterStream = 5;
    private const int StallStream = 7;

    // The slow end of the plan (DEVELOPERS, Cost and pace) is 2 µs an instruction.
    private const double SlowMicroseconds = 1.5;

    /// <summary>
    /// Gets the time from power-on to the beginning of the day, in microseconds: to come up, take the settings and learn the
    /// line.
    /// </summary>
    public long WarmUp => Costs is null ? 2_000_000 : 4_000_000;

    /// <summary>Gets a value indicating whether the board may be too slow for ordinary buckets.</summary>
    public bool IsSlow => Costs is { InstructionMicroseconds: >= SlowMicroseconds } || Rate < Bucket.LeastReadingsASecond;

    /// <summary>Readings at even distance.</summary>
    /// <param name="rate">Readings a second.</param>
    /// <returns>The pace.</returns>
    public static Pace Ideal(double rate) => new(rate, 0);

    /// <summary>The ESP32's own time.</summary>
    /// <returns>The pace.</returns>
    public static Pace Esp32() => new(2000, 0, new BoardCosts());

    /// <summary>Makes the clock.</summary>
    /// <param name="seed">The shop's seed.</param>
    /// <returns>A clock at time 0.</returns>
    public ReadingClock Clock(long seed) => Jitter > 0
        ? ReadingClock.Jittered(Rate, Jitter, new ShopRandom(seed, JitterStream))
        : ReadingClock.Ideal(Rate);

    /// <summary>Makes the board's own time.</summary>
    /// <param name="seed">The shop's seed.</param>
    /// <returns>The time; null where the board's work takes none.</returns>
    public BoardTime? Time(long seed) => Costs is null ? null : new BoardTime(Costs, new ShopRandom(seed, StallStream));
}
