using NanoDustSwitch.Sizing.Orders;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Tables;

/// <summary>Full-load currents of single-phase motors: NEC (NFPA 70) Table 430.248, read.</summary>
internal static class MotorTable
{
    /// <summary>The rows.</summary>
    public static readonly IReadOnlyList<MotorRating> Rows =
    [
        new(0.5, "1/2 hp", 9.8, 4.9),
        new(0.75, "3/4 hp", 13.8, 6.9),
        new(1, "1 hp", 16, 8),
        new(1.5, "1 1/2 hp", 20, 10),
        new(2, "2 hp", 24, 12),
        new(3, "3 hp", 34, 17),
        new(5, "5 hp", 56, 28),
    ];

    /// <summary>Finds the least rating whose current covers a load.</summary>
    /// <param name="current">The load.</param>
    /// <param name="supply">The supply.</param>
    /// <returns>The rating; null where the table ends.</returns>
    public static MotorRating? Covering(ElectricCurrent current, Supply supply) =>
        Rows.FirstOrDefault(row => row.At(supply) >= current);
}
