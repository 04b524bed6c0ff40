namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>The converter of a day file: probability of a drop-out, and the largest error of a code in counts.</summary>
internal sealed class ConverterFields
{
    [Between(0, 1)]
    public double DropOuts { get; init; }

    [Between(0, 100)]
    public double StepErrors { get; init; }
}
