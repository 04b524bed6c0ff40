using NanoDustSwitch.Sizing.Orders;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>
/// The overload protector of box or sensing head: needed where the circuit's breaker lets through more than plug, cord or contact
/// may carry, since anything can be plugged into the receptacle.
/// </summary>
internal sealed class Protector
{
    // Sold ratings of breakers for equipment and of fuses of the fused plug: common practice, no source.
    private static readonly double[] s_ratings = [3, 5, 6, 8, 10, 12, 13, 15, 16, 18, 20];
    private static readonly double[] s_fuses = [3, 5, 10, 13];

    private Protector(Order order, Circuit circuit, CordUse use, ElectricCurrent load)
    {
        Circuit = circuit;
        Load = load;
        Weakest = order.Cords.Where(cord => cord.Use == use)
            .Select(cord => cord.Size.Ampacity)
            .Append(circuit.Plug.Rating)
            .Min();
        IsFuse = circuit.Plug.IsFused;
        IsNeeded = IsFuse || circuit.Breaker > Weakest;
        Rating = (IsFuse ? s_fuses : s_ratings).Where(rating => rating >= load.Amperes && rating <= Weakest.Amperes)
            .Select(rating => (double?)rating)
            .Max();
    }

    /// <summary>Gets the circuit.</summary>
    public Circuit Circuit { get; }

    /// <summary>Gets the current that is drawn through it.</summary>
    public ElectricCurrent Load { get; }

    /// <summary>Gets the least that plug, contact (rated as the plug) and cords may carry.</summary>
    public ElectricCurrent Weakest { get; }

    /// <summary>Gets a value indicating whether it is the plug's own fuse.</summary>
    public bool IsFuse { get; }

    /// <summary>Gets a value indicating whether one is needed.</summary>
    public bool IsNeeded { get; }

    /// <summary>Gets its rating, A: as large as plug and cord allow; null where none between load and cord is sold.</summary>
    public double? Rating { get; }

    /// <summary>Gets what can flow for long to what is plugged in behind it, A.</summary>
    public double LetsThrough => IsNeeded && Rating is { } rating ? rating : Circuit.Breaker.Amperes;

    /// <summary>Gives the box's.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The protector.</returns>
    public static Protector OfBox(Order order) => new(order, order.VacuumCircuit, CordUse.Box, order.BoxCurrent);

    /// <summary>Gives the sensing head's.</summary>
    /// <param name="order">The order; where it has no head, the tool is plugged into the box.</param>
    /// <returns>The protector.</returns>
    public static Protector OfTool(Order order) =>
        order.HasHead ? new(order, order.ToolCircuit, CordUse.Head, order.ToolCurrent) : OfBox(order);
}
