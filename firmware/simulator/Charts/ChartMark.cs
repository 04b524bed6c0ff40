namespace NanoDustSwitch.Simulator.Charts;

/// <summary>Something that happened, written above a chart and marked through all its panels.</summary>
/// <param name="Seconds">When.</param>
/// <param name="Text">What, in a few words.</param>
internal readonly record struct ChartMark(double Seconds, string Text);
