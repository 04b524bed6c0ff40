namespace NanoDustSwitch.Simulator.Shop;

/// <summary>What is known of a branch circuit.</summary>
public sealed class CircuitSpecification
{
    /// <summary>Name of the circuit.</summary>
    public string Name { get; set; } = "bench";

    /// <summary>Rating of its breaker, A rms, above 0; 20 is usual in a shop at 120 V (common practice, no source).</summary>
    public double Amperes { get; set; } = 20.0;

    /// <summary>Kind of its breaker.</summary>
    public BreakerCurve Curve { get; set; } = BreakerCurve.NorthAmerican;
}
