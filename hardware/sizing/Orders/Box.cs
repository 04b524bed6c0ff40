using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>The enclosure's outside.</summary>
/// <param name="Width">Width.</param>
/// <param name="Depth">Depth.</param>
/// <param name="Height">Height.</param>
internal sealed record Box(Length Width, Length Depth, Length Height)
{
    /// <summary>The box of hardware/enclosure: its inside and twice its wall, which a test compares.</summary>
    public static readonly Box Drawn =
        new(Length.FromMillimeters(300), Length.FromMillimeters(220), Length.FromMillimeters(120));

    /// <summary>Gets the surface that gives heat to the room: all but the bottom.</summary>
    public Area Surface => (Width * Depth) + (2 * Height * (Width + Depth));

    /// <inheritdoc/>
    public override string ToString() => $"{Width.Millimeters:0}x{Depth.Millimeters:0}x{Height.Millimeters:0}mm";
}
