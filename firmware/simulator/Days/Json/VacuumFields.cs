namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>
/// The vacuum of a day file: running current in A rms, seconds of a soft start, its circuit, and the sensors that its wire goes
/// through.
/// </summary>
internal sealed class VacuumFields
{
    [Between(0.1, 100)]
    public double Amperes { get; init; } = DayFields.Usual.Shop.VacuumAmperes;

    [Between(0, 60)]
    public double SoftStart { get; init; }

    public string? Circuit { get; init; }

    public bool Sensor { get; init; }

    public bool ThroughToolSensor { get; init; }
}
