using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Tables;

/// <summary>The plugs that are known.</summary>
internal static class Plugs
{
    private static readonly Source s_nema = new("NEC 210.21(B)", Known.Read);
    private static readonly Source s_national = new("national standards", Known.Memory);

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<Plug> All =
    [
        Row("US15", "15 A, 125 V, two blades and earth", 15, 20, Place.NorthAmerica, false, false, false, s_nema),
        Row("US20", "20 A, 125 V, one blade across", 20, 20, Place.NorthAmerica, false, false, false, s_nema),
        Row("US15-240", "15 A, 250 V, two hot blades and earth", 15, 20, Place.NorthAmerica, true, false, false, s_nema),
        Row("US20-240", "20 A, 250 V, two hot blades and earth", 20, 20, Place.NorthAmerica, true, false, false, s_nema),
        Row("JP15", "15 A, 125 V, with earth pin or earth lead", 15, 20, Place.Japan, false, false, true, s_national),
        Row("UK13", "13 A, 250 V, with its fuse", 13, 32, Place.Elsewhere, false, true, false, s_national),
        Row("EU16", "16 A, 250 V, earth by side clips or pin", 16, 16, Place.Elsewhere, false, false, true, s_national),
        Row("CH10", "10 A, 250 V, three pins", 10, 13, Place.Elsewhere, false, false, false, s_national),
        Row("CH16", "16 A, 250 V, three flat pins", 16, 16, Place.Elsewhere, false, false, false, s_national),
        Row("AU10", "10 A, 250 V, three slanted pins", 10, 20, Place.Elsewhere, false, false, false, s_national),
        Row("AU15", "15 A, 250 V, wide earth pin", 15, 20, Place.Elsewhere, false, false, false, s_national),
    ];

    /// <summary>Finds the plugs that go with a supply.</summary>
    /// <param name="supply">The supply.</param>
    /// <returns>Those, the smallest of a family first.</returns>
    public static IEnumerable<Plug> For(Supply supply) =>
        All.Where(plug => plug.Place == supply.Place && plug.IsTwoHot == supply.IsTwoHot);

    /// <summary>Gives the plug that goes with a breaker where only one kind is in use.</summary>
    /// <param name="supply">The supply.</param>
    /// <param name="breaker">The breaker's rating.</param>
    /// <returns>The plug; null where there is a choice that only the owner can make.</returns>
    public static Plug? Usual(Supply supply, ElectricCurrent breaker) => supply.Place switch
    {
        Place.Elsewhere => null,
        Place.Japan => For(supply).First(),
        _ when supply.IsTwoHot => For(supply).Last(plug => plug.Rating <= breaker),
        // A 20 A circuit mostly has receptacles of 15 A.
        _ => For(supply).First(),
    };

    private static Plug Row(
        string name,
        string what,
        int amperes,
        int largestBreaker,
        Place place,
        bool isTwoHot,
        bool isFused,
        bool isReversible,
        Source source) => new(
            name,
            what,
            ElectricCurrent.FromAmperes(amperes),
            ElectricCurrent.FromAmperes(largestBreaker),
            place,
            isTwoHot,
            isFused,
            isReversible,
            source);
}
