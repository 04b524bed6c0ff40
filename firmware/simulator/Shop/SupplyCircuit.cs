namespace NanoDustSwitch.Simulator.Shop;

/// <summary>One branch circuit and its breaker. Each load names its circuit.</summary>
public sealed class SupplyCircuit
{
    /// <summary>Makes a live circuit.</summary>
    /// <param name="name">Name of the circuit.</param>
    /// <param name="ratedAmperes">Rating of its breaker, A rms.</param>
    /// <param name="curve">Kind of its breaker.</param>
    public SupplyCircuit(string name, double ratedAmperes, BreakerCurve curve)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        Name = name;
        Breaker = new Breaker(ratedAmperes, curve);
    }

    /// <summary>Name of the circuit.</summary>
    public string Name { get; }

    /// <summary>Its breaker.</summary>
    public Breaker Breaker { get; }

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
