namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// Start and stop of each kind where a specification says nothing. All common practice, no source, kept inside the
/// ranges of the survey of an open appliance-recording set: start peak 1.5 to 12 times, decay 0.05 to 1 s.
/// </summary>
public static class ToolDefaults
{
    /// <summary>First peak of a start as a multiple of the running peak.</summary>
    /// <param name="kind">Kind of load.</param>
    /// <returns>1 (no inrush) to 10.</returns>
    public static double InrushMultiple(ToolKind kind) => Row(kind).Inrush;

    /// <summary>Time constant of the start current.</summary>
    /// <param name="kind">Kind of load.</param>
    /// <returns>Seconds.</returns>
    public static double InrushSeconds(ToolKind kind) => Row(kind).Seconds;

    /// <summary>Time to come to rest (a filament: to cool).</summary>
    /// <param name="kind">Kind of load.</param>
    /// <returns>Seconds.</returns>
    public static double CoastSeconds(ToolKind kind) => Row(kind).Coast;

    private static (double Inrush, double Seconds, double Coast) Row(ToolKind kind) => kind switch
    {
        ToolKind.Induction => (6.0, 0.15, 20.0),
        ToolKind.Universal => (4.0, 0.2, 3.0),
        ToolKind.SoftStart => (1.0, 0.05, 3.0),
        ToolKind.PhaseChopped => (2.0, 0.1, 3.0),
        ToolKind.HalfWave => (3.0, 0.1, 3.0),
        ToolKind.Rectified => (3.0, 0.05, 3.0),
        ToolKind.Lamp => (10.0, 0.05, 0.5),
        ToolKind.Charger => (1.0, 0.05, 0.0),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "ToolDefaults has no row for this kind"),
    };
}
