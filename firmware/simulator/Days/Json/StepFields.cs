namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>A step of a day file. Which members it has depends on what it does; see <see cref="StepReader"/>.</summary>
internal sealed class StepFields
{
    public ClockTime? At { get; init; }

    public required DayAct Do { get; init; }

    public string? Tool { get; init; }

    [Between(0.01, 10)]
    public double? Load { get; init; }

    // Nothing typed is the return key alone, which ends the switch's 'watch'.
    [Between(0, JsonBinding.LongestLine)]
    public string? Text { get; init; }

    [Between(0.001, 3600)]
    public double? Seconds { get; init; }

    [Between(0, 2)]
    public double? Factor { get; init; }

    public string? Circuit { get; init; }

    [Between(0, 100)]
    public double? Amperes { get; init; }
}
