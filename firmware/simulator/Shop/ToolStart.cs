namespace NanoDustSwitch.Simulator.Shop;

/// <summary>How loads of a kind start and stop.</summary>
/// <param name="InrushMultiple">Start over running current, see <see cref="ToolSpecification.InrushMultiple"/>.</param>
/// <param name="InrushSeconds">Length of the start, see <see cref="ToolSpecification.InrushSeconds"/>.</param>
/// <param name="CoastSeconds">Time to come to rest (a filament: to cool; a capacitor: to empty).</param>
public sealed record ToolStart(double InrushMultiple, double InrushSeconds, double CoastSeconds);
