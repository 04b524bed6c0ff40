using NanoDustSwitch.Sizing.Orders;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>
/// The overload protector in the box: needed where the circuit's breaker lets through more than plug or cord of the box may
/// carry, since anything can be plugged into its receptacles.
/// </summary>
internal sealed class Protector
{
    // Sold ratings of breakers for equipment and of fuses of the fused plug: common practice, no source.
    private static readonly double[] s_ratings = [3, 5, 6, 8, 10, 12, 13, 15, 16, 18, 20, 25, 30];
    private static readonly double[] s_fuses = [3, 5, 10, 13];

    /// <summary>Looks at an order.</summary>
    /// <param name="order">The order.</param>
    public Protector(Order order)
    {
        Circuit circuit = order.VacuumCircuit;
        Weakest = order.Cords.Where(cord => cord.Use == CordUse.Box)
            .Select(cord => cord.Size.Ampacity)
            .Append(circuit.Plug.Rating)
            .Min();
        IsFuse = circuit.Plug.IsFused;
        IsNeeded = IsFuse || circuit.Breaker > Weakest;
        double load = order.BoxCurrent.Amperes;
        Rating = (IsFuse ? s_fuses : s_ratings).Where(rating => rating >= load && rating <= Weakest.Amperes)
            .Select(rating => (double?)rating)
            .Max();
    }

    /// <summary>Gets the least that plug and cords of the box may carry.</summary>
    public ElectricCurrent Weakest { get; }

    /// <summary>Gets a value indicating whether it is the plug's own fuse.</summary>
    public bool IsFuse { get; }

    /// <summary>Gets a value indicating whether one is needed.</summary>
    public bool IsNeeded { get; }

    /// <summary>Gets its rating, A: as large as plug and cord allow; null where none between load and cord is sold.</summary>
    public double? Rating { get; }
}
