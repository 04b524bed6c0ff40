using NanoDustSwitch.Sizing.Orders;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>The cords between a wall and a load, with the current in each.</summary>
/// <param name="name">What it leads to.</param>
/// <param name="supply">The supply.</param>
/// <param name="cords">The cords, each with its current.</param>
internal sealed class CordPath(string name, Supply supply, IReadOnlyList<(Cord Cord, ElectricCurrent Current)> cords)
{
    /// <summary>Gets what it leads to.</summary>
    public string Name { get; } = name;

    /// <summary>Gets the cords, each with its current.</summary>
    public IReadOnlyList<(Cord Cord, ElectricCurrent Current)> Cords { get; } = cords;

    /// <summary>Gets the voltage lost on the way.</summary>
    public ElectricPotential Drop =>
        Cords.Aggregate(ElectricPotential.Zero, (sum, each) => sum + DropOf(each.Cord, each.Current));

    /// <summary>Gets that as a part of the supply's voltage.</summary>
    public Ratio Part => Ratio.FromDecimalFractions(Drop / supply.Volts);

    /// <summary>Voltage lost in a cord.</summary>
    /// <param name="cord">The cord.</param>
    /// <param name="current">Its current.</param>
    /// <returns>The voltage: there and back.</returns>
    public static ElectricPotential DropOf(Cord cord, ElectricCurrent current) => current * cord.Loop;

    /// <summary>Gives the ways of an order that have cords.</summary>
    /// <param name="order">The order.</param>
    /// <returns>To the tool and to the vacuum.</returns>
    public static IEnumerable<CordPath> Of(Order order)
    {
        List<(Cord, ElectricCurrent)> box = [.. CordsOf(order, CordUse.Box, order.BoxCurrent)];
        List<(Cord, ElectricCurrent)> tool =
            [.. CordsOf(order, CordUse.Head, order.ToolCurrent), .. CordsOf(order, CordUse.Tool, order.ToolCurrent)];
        List<(Cord, ElectricCurrent)> vacuum = [.. CordsOf(order, CordUse.Vacuum, order.VacuumCurrent)];
        yield return new CordPath("tool", order.ToolCircuit.Supply, order.HasHead ? tool : [.. box, .. tool]);
        yield return new CordPath("vacuum", order.VacuumCircuit.Supply, [.. box, .. vacuum]);
    }

    private static IEnumerable<(Cord Cord, ElectricCurrent Current)> CordsOf(Order order, CordUse use, ElectricCurrent current) =>
        order.Cords.Where(cord => cord.Use == use).Select(cord => (cord, current));
}
