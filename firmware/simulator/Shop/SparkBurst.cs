namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// Sparks of an arcing contact or brush as a sensor's lead picks them up: 300 a second, 2 to 8 A of either sign, 0.1 to 1 ms
/// long (common practice, no source).
/// </summary>
/// <param name="random">Stream they are drawn from.</param>
/// <param name="from">Virtual time at which they begin, µs.</param>
public sealed class SparkBurst(ShopRandom random, long from)
{
    private const double MeanGapMicroseconds = 1e6 / 300;
    private const double LeastAmperes = 2.0;
    private const double MostAmperes = 8.0;
    private const double LeastMicroseconds = 100.0;
    private const double MostMicroseconds = 1000.0;

    private double _begin = from;
    private double _end = from;
    private double _amperes;

    /// <summary>What the sparks add.</summary>
    /// <param name="now">Virtual time, µs, never decreasing.</param>
    /// <returns>Amperes at the sensor's input.</returns>
    public double Amperes(long now)
    {
        while (now >= _end)
        {
            // Even chance at any time: the gaps between them are exponential.
            _begin = _end - (MeanGapMicroseconds * Math.Log(1.0 - random.NextDouble()));
            _end = _begin + Between(LeastMicroseconds, MostMicroseconds);
            _amperes = Between(LeastAmperes, MostAmperes) * (random.NextDouble() < 0.5 ? -1.0 : 1.0);
        }

        return now >= _begin ? _amperes : 0.0;
    }

    private double Between(double least, double most) => least + ((most - least) * random.NextDouble());
}
