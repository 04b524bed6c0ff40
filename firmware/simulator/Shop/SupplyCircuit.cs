namespace NanoDustSwitch.Simulator.Shop;

/// <summary>One branch circuit and its breaker. Each load names its circuit.</summary>
/// <param name="name">Name of the circuit.</param>
/// <param name="ratedAmperes">Rating of its breaker, A rms.</param>
/// <param name="curve">Kind of its breaker.</param>
public sealed class SupplyCircuit(string name, double ratedAmperes, BreakerCurve curve)
{
    /// <summary>Name of the circuit.</summary>
    public string Name { get; } = name;

    /// <summary>Its breaker.</summary>
    public Breaker Breaker { get; } = new(ratedAmperes, curve);

    /// <summary>Whether its loads have voltage.</summary>
    public bool IsLive => !Breaker.IsTripped;

    /// <summary>
    /// Current at the last look, A rms: the plain sum of its loads, a little above the truth where they differ in phase.
    /// </summary>
    public double Amperes { get; private set; }

    internal void Clear() => Amperes = 0.0;

    internal void Add(double amperes) => Amperes += amperes;

    internal void Judge(long now) => Breaker.Update(now, Amperes);
}
