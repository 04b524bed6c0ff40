using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>A cord.</summary>
/// <param name="Use">What it feeds.</param>
/// <param name="Length">Its length.</param>
/// <param name="LengthText">Its length as it was typed.</param>
/// <param name="Size">Size of its cores.</param>
internal sealed record Cord(CordUse Use, Length Length, string LengthText, WireSize Size)
{
    /// <summary>Gets a value indicating whether it was not given but is taken so.</summary>
    public bool IsAssumed { get; init; }

    /// <summary>Gets the resistance there and back.</summary>
    public ElectricResistance Loop => ElectricResistance.FromOhms(2 * Length.Meters * Size.OhmsPerMeter);

    /// <summary>Gets the cord as it is typed.</summary>
    public string Text => (Use == CordUse.Box ? "" : Use.ToString().ToLowerInvariant() + ":") + LengthText + "/" + Size.Name;

    /// <summary>Gets a name for people.</summary>
    public string Name => Use.ToString().ToLowerInvariant() + $", {LengthText} of {Size.Name}";
}
