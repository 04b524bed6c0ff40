using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>A tool of a day file; see <see cref="ToolSpecification"/> for what its members mean.</summary>
internal sealed class ToolFields
{
    private static readonly ToolSpecification s_usual = new();

    public required string Name { get; init; }

    public required ToolKind Kind { get; init; }

    [Between(0.01, 100)]
    public required double Amperes { get; init; }

    [Between(1, 50)]
    public double? Inrush { get; init; }

    [Between(0.001, 10)]
    public double? InrushSeconds { get; init; }

    [Between(0, 600)]
    public double? CoastSeconds { get; init; }

    [Between(0, 100)]
    public double Standby { get; init; }

    [Between(0, 60_000)]
    public double BrakeMilliseconds { get; init; }

    [Between(0, 60)]
    public double SoftStartSeconds { get; init; } = s_usual.SoftStartSeconds;

    [Between(0.1, 1)]
    public double Conduction { get; init; } = s_usual.ConductionFraction;

    // Its range depends on the mains.
    public double PulseMilliseconds { get; init; } = s_usual.PulseMilliseconds;

    [Between(0, 50)]
    public double StageAmperes { get; init; }

    [Between(0, 10)]
    public double StageSeconds { get; init; } = s_usual.StageSeconds;

    [Between(0, 86_400)]
    public double RunsSeconds { get; init; }

    [Between(1, 86_400)]
    public double RestsSeconds { get; init; } = s_usual.RestsSeconds;

    public string? Circuit { get; init; }

    public bool ToolLine { get; init; } = s_usual.IsOnToolLine;
}
