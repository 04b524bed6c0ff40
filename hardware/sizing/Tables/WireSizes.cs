using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Tables;

/// <summary>The sizes of flexible cord that are known.</summary>
/// <remarks>
/// AWG: current from NEC Table 400.5(A), resistance from NEC Chapter 9 Table 8, stranded, ohm per 1000 ft at 75 °C. mm²: current
/// from the IEC 60335-1 table of cords by rated current, resistance of class 5 copper at 20 °C from IEC 60228, carried to
/// 75 °C; Japan's 2 mm² has both from JIS C 3306.
/// </remarks>
internal static class WireSizes
{
    /// <summary>Copper's resistance at 75 °C against 20 °C: 0.00393 a degree, from memory.</summary>
    public const double At75 = 1 + (0.00393 * 55);

    private static readonly Source s_cordTable = new("NEC Table 400.5(A)", Known.Read);
    private static readonly Source s_cordTableMemory = new("NEC Table 400.5(A)", Known.Memory);
    private static readonly Source s_wireTable = new("NEC Chapter 9 Table 8", Known.Read);
    private static readonly Source s_wireTableMemory = new("NEC Chapter 9 Table 8", Known.Memory);
    private static readonly Source s_applianceCord = new("IEC 60335-1 table", Known.Read);
    private static readonly Source s_applianceCordMemory = new("IEC 60335-1 table", Known.Memory);
    private static readonly Source s_britishCord = new("BS 7671 Table 4F3A", Known.Memory);
    private static readonly Source s_japaneseCord = new("JIS C 3306", Known.Memory);
    private static readonly Source s_classFive = new("IEC 60228", Known.Memory);

    /// <summary>All of them, the thinnest of a family first.</summary>
    public static readonly IReadOnlyList<WireSize> All =
    [
        Awg("18AWG", 10, s_cordTable, 7.95, s_wireTableMemory),
        Awg("16AWG", 13, s_cordTable, 4.99, s_wireTableMemory),
        Awg("14AWG", 18, s_cordTable, 3.14, s_wireTable),
        Awg("12AWG", 25, s_cordTable, 1.98, s_wireTable),
        Awg("10AWG", 30, s_cordTableMemory, 1.24, s_wireTable),
        Metric("0.75mm2", 6, s_applianceCord, 26),
        Metric("1mm2", 10, s_applianceCord, 19.5),
        Metric("1.25mm2", 13, s_britishCord, 15.6),
        Metric("1.5mm2", 16, s_applianceCord, 13.3),
        Metric("2mm2", 17, s_japaneseCord, 9.79),
        Metric("2.5mm2", 25, s_applianceCord, 7.98),
        Metric("4mm2", 32, s_applianceCordMemory, 4.95),
    ];

    /// <summary>Gives the thicker sizes of a size's family.</summary>
    /// <param name="size">The size.</param>
    /// <returns>From the next one up.</returns>
    public static IEnumerable<WireSize> ThickerThan(WireSize size) => FamilyOf(size).SkipWhile(other => other != size).Skip(1);

    /// <summary>Gives the thinnest size of a size's family that carries a current.</summary>
    /// <param name="size">A size of the family.</param>
    /// <param name="current">The current.</param>
    /// <returns>The size.</returns>
    public static WireSize Carrying(WireSize size, ElectricCurrent current) =>
        FamilyOf(size).First(other => other.Ampacity >= current);

    private static IEnumerable<WireSize> FamilyOf(WireSize size) => All.Where(
        other => other.Name.EndsWith("AWG", StringComparison.Ordinal) == size.Name.EndsWith("AWG", StringComparison.Ordinal));

    private static WireSize Awg(string name, double amperes, Source ampacity, double ohmsPer1000Feet, Source resistance) =>
        new(name, ElectricCurrent.FromAmperes(amperes), ampacity, ohmsPer1000Feet / Length.FromFeet(1000).Meters, resistance);

    private static WireSize Metric(string name, double amperes, Source ampacity, double ohmsPerKilometer) =>
        new(
            name,
            ElectricCurrent.FromAmperes(amperes),
            ampacity,
            ohmsPerKilometer / 1000 * At75,
            ampacity == s_japaneseCord ? s_japaneseCord : s_classFive);
}
