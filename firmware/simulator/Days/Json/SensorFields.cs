using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>
/// The sensor of a day file: gain in mV/A, noise and hum in A rms, the hum's angle in degrees, drift in mV an hour, and by how
/// much the crosstalk lags the vacuum's current.
/// </summary>
internal sealed class SensorFields
{
    public SensorKind Kind { get; init; } = DayFields.Usual.Shop.Sensor;

    [Between(0.1, 1000)]
    public double? Gain { get; init; }

    [Between(1, 10, IsWhole = true)]
    public double Turns { get; init; } = DayFields.Usual.Turns;

    [Between(0, 100)]
    public double Noise { get; init; } = DayFields.Usual.NoiseAmperes;

    public NoiseFields? NoiseFrom { get; init; }

    [Between(0, 100)]
    public double Hum { get; init; }

    [Between(-360, 360)]
    public double HumDegrees { get; init; } = DayFields.Usual.HumDegrees;

    [Between(-10_000, 10_000)]
    public double Drift { get; init; }

    [Between(-1, 1)]
    public double Crosstalk { get; init; }

    [Between(0, 360)]
    public double CrosstalkDegrees { get; init; }
}
