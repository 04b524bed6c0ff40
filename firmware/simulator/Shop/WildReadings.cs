namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// Readings that are off by any height up to a greatest one, of either sign: single ones, as a spike on the supply or a bad
/// contact makes them, or showers of them (common practice, no source).
/// </summary>
/// <param name="random">Stream they are drawn from.</param>
/// <param name="aSecond">How many single readings, or showers, come in a second; at any time.</param>
/// <param name="amperes">Greatest height, A at the sensor's input.</param>
/// <param name="showerSeconds">
/// How long a shower lasts, s, in which every third reading is wild, and after which it is calm for twice as long at the least; 0
/// for single readings.
/// </param>
/// <param name="from">Virtual time from which they come, µs.</param>
public sealed class WildReadings(ShopRandom random, double aSecond, double amperes, double showerSeconds, long from)
{
    private const double ShareOfAShower = 1.0 / 3.0;

    private double _begin = from + Gap(random, aSecond);

    /// <summary>What is added to a reading. Each call is a reading.</summary>
    /// <param name="now">Virtual time, µs, never decreasing.</param>
    /// <returns>Amperes at the sensor's input.</returns>
    public double Amperes(long now)
    {
        if (now < _begin)
        {
            return 0.0;
        }

        if (now >= _begin + (1e6 * showerSeconds))
        {
            _begin += (3e6 * showerSeconds) + Gap(random, aSecond);
            return showerSeconds > 0.0 ? 0.0 : Height();
        }

        return random.NextDouble() < ShareOfAShower ? Height() : 0.0;
    }

    private static double Gap(ShopRandom random, double aSecond) => -Math.Log(1.0 - random.NextDouble()) * 1e6 / aSecond;

    private double Height() => amperes * ((2.0 * random.NextDouble()) - 1.0);
}
