namespace NanoDustSwitch.Simulator.Shop;

/// <summary>The pace of the readings: when the next one is taken.</summary>
public sealed class ReadingClock
{
    private readonly ShopRandom _random;
    private readonly double _shortest;
    private readonly double _spread;
    private double _due;

    private ReadingClock(double rate, double jitterFraction, ShopRandom random)
    {
        if (!(rate >= 1.0 && rate <= 200_000.0))
        {
            throw new ArgumentOutOfRangeException(nameof(rate), "1 to 200,000 readings a second");
        }

        if (!(jitterFraction >= 0.0 && jitterFraction < 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(jitterFraction), "0 up to 1");
        }

        double interval = 1e6 / rate;
        _shortest = interval * (1.0 - jitterFraction);
        _spread = interval * 2.0 * jitterFraction;
        _random = random;
    }

    /// <summary>Virtual time of the next reading, µs. The first is due at 0.</summary>
    public long Due { get; private set; }

    /// <summary>Readings at even distance.</summary>
    /// <param name="rate">Readings a second, 1 to 200,000; 2,000 is what the switch plans with.</param>
    /// <returns>The clock.</returns>
    public static ReadingClock Ideal(double rate) => new ReadingClock(rate, 0.0, new ShopRandom(0, 0));

    /// <summary>Readings whose every distance is even-distributed about the mean.</summary>
    /// <param name="rate">Readings a second on average, 1 to 200,000.</param>
    /// <param name="jitterFraction">Largest departure as a part of the mean distance, 0 up to 1.</param>
    /// <param name="random">Stream the distances are drawn from.</param>
    /// <returns>The clock.</returns>
    public static ReadingClock Jittered(double rate, double jitterFraction, ShopRandom random) =>
        new(rate, jitterFraction, random);

    /// <summary>The reading that was due is taken: goes on to the next one, at least 1 µs later.</summary>
    public void Advance()
    {
        // Kept as a fraction: a rate that does not divide a million must not drift.
        _due += _spread > 0.0 ? _shortest + (_spread * _random.NextDouble()) : _shortest;
        Due = Math.Max(Due + 1, (long)_due);
    }

    /// <summary>The board was busy: no reading is taken before this time.</summary>
    /// <param name="until">Virtual time, µs.</param>
    public void SkipTo(long until)
    {
        if (until > Due)
        {
            Due = until;
            _due = until;
        }
    }
}
