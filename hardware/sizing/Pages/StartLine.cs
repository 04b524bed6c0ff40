using ScottPlot;

namespace NanoDustSwitch.Sizing.Pages;

/// <summary>A start that is drawn against a breaker.</summary>
/// <param name="Name">What starts, in a few words.</param>
/// <param name="Color">Its colour.</param>
/// <param name="Course">Time in s and current in A rms.</param>
internal sealed record StartLine(string Name, Color Color, IReadOnlyList<(double Seconds, double Amperes)> Course);
