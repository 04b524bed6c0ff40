using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>
/// A tool that starts again and again, each time from rest: its current from the moment when its switch closes.
/// </summary>
internal abstract class StartLoad
{
    /// <summary>Distance of two values of the current, s.</summary>
    public const double Step = 100e-6;

    // Most by which the voltage of a start is off: common practice, no source.
    private const double MostOff = 0.03;

    /// <summary>Gets what its current settles at, at nominal voltage, A rms.</summary>
    public abstract double SettledAmperes { get; }

    /// <summary>Closes the switch, at any point of the cycle and at a voltage a little off.</summary>
    /// <param name="random">All chance.</param>
    public void Begin(ShopRandom random) => Begin(random.NextDouble(), 1 + (MostOff * ((2 * random.NextDouble()) - 1)));

    /// <summary>
    /// Gives the next value of the current; each call is one step later, the first at the moment of the switch.
    /// </summary>
    /// <returns>Amperes.</returns>
    public abstract double Next();

    /// <summary>Closes the switch.</summary>
    /// <param name="turn">Point of the cycle, 0 to 1.</param>
    /// <param name="factor">Voltage as a part of nominal.</param>
    protected abstract void Begin(double turn, double factor);
}
