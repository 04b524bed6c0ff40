using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Tables;

/// <summary>Ratings in which branch breakers are sold (common practice, no source).</summary>
internal static class BreakerRatings
{
    /// <summary>Gives the ratings, A.</summary>
    /// <param name="place">Where.</param>
    /// <returns>From the smallest up.</returns>
    public static IReadOnlyList<int> Of(Place place) => place == Place.Elsewhere ? [6, 10, 13, 16, 20, 25, 32] : [15, 20, 30];
}
