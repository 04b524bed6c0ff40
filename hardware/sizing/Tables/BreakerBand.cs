using NanoDustSwitch.Sizing.Sources;

namespace NanoDustSwitch.Sizing.Tables;

/// <summary>When breakers of a kind trip; multiples are of the rated current, rms.</summary>
/// <param name="From">The least multiple at which its magnet may trip it at once.</param>
/// <param name="To">The multiple at which it trips at once for certain.</param>
/// <param name="MustTrip">The multiples, and times in s, by which its heat must have tripped it.</param>
/// <param name="Source">Where the band of the magnet is from.</param>
internal sealed record BreakerBand(double From, double To, (double Multiple, double Seconds)[] MustTrip, Source Source);
