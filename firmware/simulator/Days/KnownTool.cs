namespace NanoDustSwitch.Simulator.Days;

/// <summary>A tool that the box knows before the day begins, by its name in the shop.</summary>
/// <param name="Tool">The tool's name.</param>
/// <param name="RunOnSeconds">A run-on of its own, s; null for that of the setting.</param>
/// <param name="NeedsNoVacuum">Whether the vacuum takes no notice of it.</param>
internal sealed record KnownTool(string Tool, double? RunOnSeconds, bool NeedsNoVacuum);
