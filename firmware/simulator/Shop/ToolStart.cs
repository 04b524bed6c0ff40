namespace NanoDustSwitch.Simulator.Shop;

/// <summary>How loads of a kind start and stop.</summary>
/// <param name="InrushMultiple">First peak of a start as a multiple of the running peak: 1 (no inrush) to 10.</param>
/// <param name="InrushSeconds">Time constant of the start current.</param>
/// <param name="CoastSeconds">Time to come to rest (a filament: to cool).</param>
public sealed record ToolStart(double InrushMultiple, double InrushSeconds, double CoastSeconds);
