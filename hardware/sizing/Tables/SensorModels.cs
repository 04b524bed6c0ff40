using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Tables;

/// <summary>The sensors that are known, and the converter they are read with.</summary>
internal static class SensorModels
{
    /// <summary>Secondary turns of the transformer.</summary>
    public const double Ratio = 2000;

    /// <summary>Its burden, ohm.</summary>
    public const double BurdenOhms = 47;

    /// <summary>Lower end of the converter's usable span, mV.</summary>
    public const double UsableFrom = 150;

    /// <summary>Upper end of it, mV.</summary>
    public const double UsableTo = 2450;

    /// <summary>Size of a count, mV.</summary>
    public const double MillivoltsPerCount = 0.806;

    // Half of 5 V in millivolts; the divider halves it again, with the gain.
    private const double HallSwing = 2500;

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<SensorModel> All =
    [
        new(
            "transformer-100A", SensorKind.Transformer, 1000 / Ratio * BurdenOhms, "1000 mA / 2000 x 47 ohm", Millivolts(1270),
            Amperes(100), Amperes(1000), Source.Transformer),
        Hall("hall-5A", 5, 185),
        Hall("hall-20A", 20, 100),
        Hall("hall-30A", 30, 66),
    ];

    private static SensorModel Hall(string name, double rated, double gain) => new(
        name, SensorKind.Hall, gain / 2, $"{gain:0} mV/A at 5 V, halved by the divider", Millivolts(1250),
        Amperes(rated), Amperes(HallSwing / gain), Source.Hall);

    private static ElectricPotential Millivolts(double value) => ElectricPotential.FromMillivolts(value);

    private static ElectricCurrent Amperes(double value) => ElectricCurrent.FromAmperes(value);
}
