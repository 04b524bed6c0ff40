namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>
/// The readings of a day file: how many a second, and the largest departure from even distance as a part of it.
/// </summary>
internal sealed class ReadingsFields
{
    public PaceWord Pace { get; init; }

    // The switch takes at most 64 readings in a bucket of 2.5 ms.
    [Between(1, 20_000)]
    public double Rate { get; init; } = DayFields.Usual.Pace.Rate;

    [Between(0, 0.99)]
    public double Jitter { get; init; } = DayFields.Usual.Pace.Jitter;
}
