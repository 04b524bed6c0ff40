namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>
/// A recording whose noise the sensor shall have: its values a second, the frequency of its mains in Hz, and A rms in the shop.
/// </summary>
internal sealed class NoiseFields
{
    public required string File { get; init; }

    [Between(1, 1000, IsWhole = true)]
    public double Column { get; init; } = 1;

    [Between(100, 200_000)]
    public required double Rate { get; init; }

    [Between(45, 65)]
    public required double Hertz { get; init; }

    [Between(0, 100)]
    public required double Amperes { get; init; }
}
