namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>
/// The vacuum of a day file: running current in A rms, its circuit, and the sensors that its wire goes through.
/// </summary>
internal sealed class VacuumFields
{
    [Between(0.1, 100)]
    public double Amperes { get; init; } = DayFields.Usual.Shop.VacuumAmperes;

    public string? Circuit { get; init; }

    public bool Sensor { get; init; }

    public bool ThroughToolSensor { get; init; }
}
