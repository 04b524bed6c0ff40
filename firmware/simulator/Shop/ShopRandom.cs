using System.Numerics;

namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The one source of chance in the shop: xoshiro256** (Blackman and Vigna, from memory), seeded through SplitMix64.
/// The same seed and stream give the same bits on every machine.
/// </summary>
public sealed class ShopRandom
{
    private const ulong GoldenRatio = 0x9E3779B97F4A7C15UL;
    private const double DoubleStep = 1.0 / (1UL << 53);

    private ulong _a;
    private ulong _b;
    private ulong _c;
    private ulong _d;

    /// <summary>Starts a stream.</summary>
    /// <param name="seed">Any number; the shop's seed.</param>
    /// <param name="stream">Which of the seed's independent streams, so that one part's draws never shift another's.</param>
    public ShopRandom(long seed, int stream)
    {
        // The stream number is mixed before it meets the seed, so that (1, 2) and (2, 1) do not come out alike.
        ulong offset = unchecked((ulong)stream);
        ulong state = unchecked((ulong)seed) ^ SplitMix(ref offset);
        _a = SplitMix(ref state);
        _b = SplitMix(ref state);
        _c = SplitMix(ref state);
        _d = SplitMix(ref state);
    }

    /// <summary>Draws 64 even bits.</summary>
    /// <returns>Any 64-bit number, all alike probable.</returns>
    public ulong NextBits()
    {
        ulong result = BitOperations.RotateLeft(_b * 5, 7) * 9;
        ulong shifted = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= shifted;
        _d = BitOperations.RotateLeft(_d, 45);
        return result;
    }

    /// <summary>Draws an even number.</summary>
    /// <returns>0 up to, but never, 1.</returns>
    public double NextDouble() => (NextBits() >> 11) * DoubleStep;

    /// <summary>Draws from the normal distribution of mean 0 and deviation 1, exact into the tails.</summary>
    /// <returns>A number of no bound; 5 and beyond comes once in 1.7 million.</returns>
    public double NextGaussian()
    {
        // The layer takes the low 8 bits and the place within it the high 53: with shared bits the tails come out wrong.
        while (true)
        {
            ulong bits = NextBits();
            int layer = (int)(bits & 0xFF);
            double place = ((long)bits >> 11) * (1.0 / (1L << 52));
            double value = place * Ziggurat.Edge(layer);
            if (Math.Abs(value) < Ziggurat.Edge(layer + 1))
            {
                return value;
            }

            if (layer == 0)
            {
                return Math.CopySign(NextTail(), place);
            }

            double low = Ziggurat.Height(layer);
            double high = Ziggurat.Height(layer + 1);
            if (low + (NextDouble() * (high - low)) < Math.Exp(-0.5 * value * value))
            {
                return value;
            }
        }
    }

    private static ulong SplitMix(ref ulong state)
    {
        unchecked
        {
            state += GoldenRatio;
            ulong z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }

    private double NextTail()
    {
        // Marsaglia's method for the part beyond the last layer; 1 - u keeps the logarithm's argument above zero.
        while (true)
        {
            double beyond = -Math.Log(1.0 - NextDouble()) / Ziggurat.Outermost;
            double weight = -Math.Log(1.0 - NextDouble());
            if (weight + weight > beyond * beyond)
            {
                return Ziggurat.Outermost + beyond;
            }
        }
    }
}
