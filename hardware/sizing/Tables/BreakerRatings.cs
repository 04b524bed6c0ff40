using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Tables;

/// <summary>
/// Ratings in which branch breakers are sold (common practice, no source), as far as the parts of hardware/parts.csv carry them:
/// terminals and outlets up to 20 A; more only before a plug with its own fuse.
/// </summary>
internal static class BreakerRatings
{
    /// <summary>Gives the ratings, A.</summary>
    /// <param name="place">Where.</param>
    /// <returns>From the smallest up.</returns>
    public static IReadOnlyList<int> Of(Place place) => place == Place.Elsewhere ? [6, 10, 13, 16, 20, 25, 32] : [15, 20];
}
