using UnitsNet.Units;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>The units that may be typed, in small letters.</summary>
internal static class Units
{
    /// <summary>Of a current.</summary>
    public static readonly IReadOnlyDictionary<string, Enum> Current = new Dictionary<string, Enum>(StringComparer.Ordinal)
    {
        ["a"] = ElectricCurrentUnit.Ampere,
        ["ma"] = ElectricCurrentUnit.Milliampere,
    };

    /// <summary>Of a power.</summary>
    public static readonly IReadOnlyDictionary<string, Enum> Power = new Dictionary<string, Enum>(StringComparer.Ordinal)
    {
        ["w"] = PowerUnit.Watt,
        ["kw"] = PowerUnit.Kilowatt,
    };

    /// <summary>Of a voltage.</summary>
    public static readonly IReadOnlyDictionary<string, Enum> Voltage = new Dictionary<string, Enum>(StringComparer.Ordinal)
    {
        ["v"] = ElectricPotentialUnit.Volt,
    };

    /// <summary>Of a frequency.</summary>
    public static readonly IReadOnlyDictionary<string, Enum> Frequency = new Dictionary<string, Enum>(StringComparer.Ordinal)
    {
        ["hz"] = FrequencyUnit.Hertz,
    };

    /// <summary>Of a length.</summary>
    public static readonly IReadOnlyDictionary<string, Enum> Length = new Dictionary<string, Enum>(StringComparer.Ordinal)
    {
        ["m"] = LengthUnit.Meter,
        ["ft"] = LengthUnit.Foot,
    };
}
