namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>
/// The mains of a day file: V rms, Hz, ohm; how far and how slowly its frequency wanders, and its third harmonic.
/// </summary>
internal sealed class MainsFields
{
    // Both or neither: a voltage from one country and a frequency from another are nobody's mains.
    [Between(1, 1000)]
    public required double Volts { get; init; }

    [Between(45, 65)]
    public required double Hertz { get; init; }

    [Between(0, 10)]
    public double Ohms { get; init; } = DayFields.Usual.Shop.SourceOhms;

    [Between(0, 5)]
    public double WanderHertz { get; init; }

    [Between(1, 3600)]
    public double WanderSeconds { get; init; } = DayFields.Usual.Shop.WanderSeconds;

    [Between(0, 0.1)]
    public double Flattening { get; init; }
}
