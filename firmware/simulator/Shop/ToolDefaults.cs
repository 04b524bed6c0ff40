namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// Start and stop of each kind where a specification says nothing. All common practice, no source, kept inside the
/// ranges of the survey of an open appliance-recording set: start peak 1.5 to 12 times, decay 0.05 to 1 s.
/// </summary>
public static class ToolDefaults
{
    /// <summary>Gives the row of a kind.</summary>
    /// <param name="kind">Kind of load.</param>
    /// <returns>Its row.</returns>
    public static ToolStart Of(ToolKind kind) => kind switch
    {
        ToolKind.Induction => new(6.0, 0.4, 20.0),
        ToolKind.Universal => new(4.0, 0.4, 3.0),
        ToolKind.SoftStart => new(1.0, 0.3, 3.0),
        ToolKind.PhaseChopped => new(3.0, 0.3, 3.0),
        ToolKind.HalfWave => new(3.0, 0.3, 3.0),
        ToolKind.Rectified => new(3.0, 0.05, 3.0),
        ToolKind.Lamp => new(10.0, 0.1, 0.5),
        ToolKind.Charger => new(1.0, 0.05, 0.5),
        ToolKind.Compressor => new(5.5, 0.3, 0.5),
        ToolKind.Transformer => new(8.0, 0.2, 0.0),
        ToolKind.Inverter => new(3.0, 0.05, 3.0),
        ToolKind.Corrected => new(3.0, 0.02, 3.0),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "ToolDefaults has no row for this kind"),
    };
}
