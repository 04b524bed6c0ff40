namespace NanoDustSwitch.Simulator.Days;

/// <summary>One thing that happens in the shop.</summary>
/// <param name="At">When, in microseconds.</param>
/// <param name="Act">What.</param>
/// <param name="Tool">Name of the tool it is done with, where it is done with one.</param>
/// <param name="Value">Load of the tool (1 = rated), seconds of a button press, voltage factor of the mains, A rms of noise, or A
/// of a radio's bursts.</param>
/// <param name="Text">Line that is typed, or name of a circuit.</param>
/// <param name="Seconds">How long it lasts; 0 for good.</param>
internal sealed record DayStep(
    long At, DayAct Act, string? Tool = null, double Value = 0, string? Text = null, double Seconds = 0);
