namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>The mains of a day file: V rms, Hz, ohm.</summary>
internal sealed class MainsFields
{
    // Both or neither: a voltage from one country and a frequency from another are nobody's mains.
    [Between(1, 1000)]
    public required double Volts { get; init; }

    [Between(45, 65)]
    public required double Hertz { get; init; }

    [Between(0, 10)]
    public double Ohms { get; init; } = DayFields.Usual.Shop.SourceOhms;
}
