namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// What brushes do to a current as they make and break contact: noise that is held for 128 µs and follows from the time alone, so
/// that nothing hangs on how often somebody looks.
/// </summary>
/// <param name="seed">The seed.</param>
internal sealed class BrushNoise(long seed)
{
    private const int HeldBits = 7;
    private const int SeedBits = 40;

    /// <summary>Gives the noise of a time.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <returns>An even number from -1 to 1.</returns>
    public double At(long now)
    {
        ulong bits = unchecked((ulong)((now >> HeldBits) ^ (seed << SeedBits)) * 0x9E3779B97F4A7C15UL);
        bits = unchecked((bits ^ (bits >> 32)) * 0xD6E8FEB86659FD93UL);
        return ((long)bits >> 11) * (1.0 / (1L << 52));
    }
}
