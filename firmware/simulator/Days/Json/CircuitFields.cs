using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>A circuit of a day file: rating of its breaker in A, and the breaker's kind.</summary>
internal sealed class CircuitFields
{
    /// <summary>What holds where the file says nothing.</summary>
    public static readonly CircuitSpecification Usual = new();

    public required string Name { get; init; }

    [Between(0.1, 1000)]
    public double Amperes { get; init; } = Usual.Amperes;

    public BreakerCurve Curve { get; init; } = Usual.Curve;
}
