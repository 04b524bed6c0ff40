using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>A recording as the board sees it, with modelled idle before and after it.</summary>
/// <param name="values">The recording: amperes, or counts.</param>
/// <param name="isCounts">Whether they are counts.</param>
/// <param name="lead">Readings of idle before and after it.</param>
/// <param name="seed">Seed of the noise.</param>
internal sealed class RecordingLine(float[] values, bool isCounts, int lead, long seed) : Line
{
    // Noise of an idle line in counts, as of the default sensor.
    private const double IdleNoiseCounts = 4.0;

    private readonly CurrentSensor _sensor = new(SensorKind.Transformer, new ShopRandom(seed, 1));
    private readonly Converter _converter = new(new ShopRandom(seed, 2));
    private readonly ShopRandom _random = new(seed, 3);
    private readonly double _restCounts = isCounts ? values.Average(value => (double)value) : 0;
    private int _next;

    /// <inheritdoc/>
    public override int FullScale => _converter.FullScale;

    /// <inheritdoc/>
    public override int MicrovoltsACount => (int)_converter.MicrovoltsPerCount;

    /// <summary>Fits the sensor that the switch is set for; amperes go through it, counts came from it.</summary>
    /// <param name="millivoltsAnAmpere">Its gain with one turn, mV/A.</param>
    /// <param name="turns">Turns of the wire through it.</param>
    public void Fit(double millivoltsAnAmpere, int turns)
    {
        _sensor.MillivoltsPerAmpere = millivoltsAnAmpere;
        _sensor.Turns = turns;
    }

    /// <inheritdoc/>
    public override int Read(long now)
    {
        int at = _next++ - lead;
        bool isIdle = at < 0 || at >= values.Length;
        if (isCounts)
        {
            double counts = isIdle ? _restCounts + (IdleNoiseCounts * _random.NextGaussian()) : values[at];
            return (int)Math.Clamp(Math.Round(counts), int.MinValue, int.MaxValue);
        }

        double amperes = isIdle ? 0 : values[at];
        _sensor.Follow(now, amperes, 0, default);
        return _converter.Convert(_sensor.Millivolts());
    }

    /// <inheritdoc/>
    public override void Advance(long now)
    {
    }

    /// <inheritdoc/>
    public override void SetRelayLine(long now, bool high)
    {
    }
}
