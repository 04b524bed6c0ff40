namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The small supply inside the box. It hangs on the vacuum's circuit, gives up below half of the nominal voltage, and
/// bridges 20 ms from its capacitor (both common practice for a small switching supply, no source).
/// </summary>
internal sealed class BoxSupply
{
    private const double LeastFactor = 0.5;
    private const long HoldUpMicroseconds = 20_000;

    private long _goodAt;

    /// <summary>Whether the board has its voltage.</summary>
    internal bool IsOn { get; private set; } = true;

    /// <summary>Moves on to a time.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="live">Whether its circuit's breaker is closed.</param>
    /// <param name="factor">Voltage as a part of nominal.</param>
    internal void Update(long now, bool live, double factor)
    {
        if (live && factor >= LeastFactor)
        {
            _goodAt = now;
            IsOn = true;
        }
        else if (now - _goodAt > HoldUpMicroseconds)
        {
            IsOn = false;
        }
    }
}
