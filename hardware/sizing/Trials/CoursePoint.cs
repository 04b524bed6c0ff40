namespace NanoDustSwitch.Sizing.Trials;

/// <summary>Current of the circuits at a time.</summary>
/// <param name="Seconds">Time from the tool's start.</param>
/// <param name="Tool">Current of the tool's circuit, A rms.</param>
/// <param name="Vacuum">Current of the vacuum's circuit, A rms; the same circuit where it has none of its own.</param>
internal sealed record CoursePoint(double Seconds, double Tool, double Vacuum);
