using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>What hangs on a circuit, and what its breaker and receptacle may carry.</summary>
/// <param name="circuit">The circuit.</param>
/// <param name="name">What it feeds.</param>
/// <param name="nameplate">The loads by their nameplates, or by the code's table for a motor in horsepower.</param>
/// <param name="isWhole">Whether it is what several plugs draw together, which no one of them carries.</param>
internal sealed class CircuitLoad(Circuit circuit, string name, ElectricCurrent nameplate, bool isWhole = false)
{
    /// <summary>The code counts a load that may last for three hours with a quarter more, which is 80 % of the rating.</summary>
    public const double ContinuousFactor = 1.25;

    /// <summary>Part of a rating that may be drawn for long: the code's where there is one, practice elsewhere.</summary>
    public const double ContinuousPart = 0.8;

    /// <summary>Gets the circuit.</summary>
    public Circuit Circuit { get; } = circuit;

    /// <summary>Gets what it feeds.</summary>
    public string Name { get; } = name;

    /// <summary>Gets the load.</summary>
    public ElectricCurrent Nameplate { get; } = nameplate;

    /// <summary>Gets a value indicating whether it is what several plugs draw together, which no one of them carries.</summary>
    public bool IsWhole { get; } = isWhole;

    /// <summary>Gets the weakest rating on the way: breaker or receptacle with its plug.</summary>
    public ElectricCurrent Rating =>
        IsWhole || Circuit.Breaker < Circuit.Plug.Rating ? Circuit.Breaker : Circuit.Plug.Rating;

    /// <summary>Gets a value indicating whether the code wants the load counted as continuous.</summary>
    public bool IsAmerican => Circuit.Supply.Place == Place.NorthAmerica;

    /// <summary>Gets the load as the code counts it.</summary>
    public ElectricCurrent CodeLoad => IsAmerican ? Nameplate * ContinuousFactor : Nameplate;

    /// <summary>Gets the greatest load by nameplates.</summary>
    public ElectricCurrent Limit => IsAmerican ? Rating * ContinuousPart : Rating;

    /// <summary>Gets a value indicating whether the load is within that; a thousandth of an ampere is rounding.</summary>
    public bool Holds => Nameplate.Amperes <= Limit.Amperes + 0.001;

    /// <summary>Gets a value indicating whether it is more than a rating bears for hours.</summary>
    public bool IsLong => Nameplate.Amperes > (Rating.Amperes * ContinuousPart) + 0.001;

    /// <summary>Gets a value indicating whether the receptacle belongs on a circuit of this breaker.</summary>
    public bool IsReceptacleRight =>
        Circuit.Breaker <= Circuit.Plug.LargestBreaker && (!IsAmerican || Circuit.Plug.Rating <= Circuit.Breaker);

    /// <summary>Gives the circuits of an order.</summary>
    /// <param name="order">The order.</param>
    /// <returns>One, or the tool's and the vacuum's.</returns>
    public static IReadOnlyList<CircuitLoad> Of(Order order)
    {
        ElectricCurrent sum = order.ToolCurrent + order.VacuumCurrent;
        return !order.HasHead ? [new(order.ToolCircuit, "the circuit", sum)]
            : order.IsSameCircuit
                ? [
                    new(order.ToolCircuit, "tool's plug", order.ToolCurrent),
                    new(order.VacuumCircuit, "vacuum's plug", order.VacuumCurrent),
                    new(order.ToolCircuit, "both plugs", sum, isWhole: true),
                ]
            : [
                new(order.ToolCircuit, "tool's circuit", order.ToolCurrent),
                new(order.VacuumCircuit, "vacuum's circuit", order.VacuumCurrent),
            ];
    }
}
