namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// A mobile telephone that transmits beside a sensor's lead: a slot of 577 µs in every frame of 4.615 ms (GSM, from memory),
/// rectified by the first junction it meets, so always of one sign.
/// </summary>
/// <param name="amperes">Height of a burst, A at the sensor's input.</param>
/// <param name="from">Virtual time at which it begins, µs.</param>
public sealed class RadioBurst(double amperes, long from)
{
    private const long FrameMicroseconds = 4615;
    private const long SlotMicroseconds = 577;

    /// <summary>What the bursts add.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <returns>Amperes at the sensor's input.</returns>
    public double Amperes(long now) => Math.Max(0, now - from) % FrameMicroseconds < SlotMicroseconds ? amperes : 0.0;
}
