namespace NanoDustSwitch.Simulator.Days;

/// <summary>A line of the timeline.</summary>
/// <param name="Time">When, in microseconds of shop time.</param>
/// <param name="Who">Whose doing it is.</param>
/// <param name="Text">What.</param>
internal sealed record Entry(long Time, Who Who, string Text);
