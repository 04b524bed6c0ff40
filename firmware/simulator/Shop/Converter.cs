using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The analogue-to-digital converter: millivolts in, counts out. By default that of the ESP32 with 12 dB attenuation:
/// 12 bits, usable from 150 to 2450 mV (Espressif's ESP-IDF documentation).
/// </summary>
/// <remarks>
/// Outside the usable band it leaves the straight line gently: below, it reads 0 from half the band's lower end down;
/// above, it reads full scale from three quarters of the rest up, which is 3.09 V (such parts: about 3.1 V, from memory).
/// </remarks>
public sealed class Converter
{
    /// <summary>What <see cref="Convert"/> gives for a reading that failed.</summary>
    public const int Failed = -1;

    private const double UsableFromMillivolts = 150.0;
    private const double UsableToMillivolts = 2450.0;

    private readonly ShopRandom _random;
    private int _fullScale = 4095;
    private double _microvoltsPerCount = 806.0;
    private double _countsPerMillivolt;
    private double _firstStraight;
    private double _lastStraight;
    private double _lowBend;
    private double _highBend;
    private double[]? _steps;
    private int _latest = Failed;

    /// <summary>Makes a converter in order.</summary>
    /// <param name="random">Stream for step errors and drop-outs.</param>
    public Converter(ShopRandom random)
    {
        _random = random;
        Recompute();
    }

    /// <summary>Highest count: 4095 for 12 bits, 1023 for 10.</summary>
    public int FullScale
    {
        get => _fullScale;
        set
        {
            _fullScale = Math.Clamp(value, 1, ConverterScale.MostCounts);
            _steps = null;
            Recompute();
        }
    }

    /// <summary>Size of a count, µV: 806 by default, 4883 for 10 bits at 5 V. ESP32 parts differ by ±10 %.</summary>
    public double MicrovoltsPerCount
    {
        get => _microvoltsPerCount;
        set
        {
            _microvoltsPerCount = Math.Max(1.0, value);
            Recompute();
        }
    }

    /// <summary>
    /// Bow of the straight part: error at half scale, counts. 4 by default; the ESP32 data sheet allows ±12 (from memory).
    /// </summary>
    public double BowCounts { get; set; } = 4.0;

    /// <summary>Probability that a reading comes back as 0 or as full scale, 0 to 1; 0 by default.</summary>
    public double DropOutProbability { get; set; }

    /// <summary>Whether it gives its last reading over and over; without one yet, its first.</summary>
    public bool IsFrozen { get; set; }

    /// <summary>Whether readings fail.</summary>
    public bool IsFailing { get; set; }

    /// <summary>Puts it in order again.</summary>
    public void Mend()
    {
        IsFrozen = false;
        IsFailing = false;
    }

    /// <summary>Gives every code its own error, once and for all.</summary>
    /// <param name="counts">Largest error, counts, 0 (none) to 7, what the ESP32 data sheet allows (from memory).</param>
    public void SetStepErrors(double counts)
    {
        _steps = null;
        if (counts > 0.0)
        {
            double[] steps = new double[_fullScale + 1];
            for (int i = 0; i < steps.Length; i++)
            {
                steps[i] = counts * ((2.0 * _random.NextDouble()) - 1.0);
            }

            _steps = steps;
        }
    }

    /// <summary>Takes one reading.</summary>
    /// <param name="millivolts">Voltage at the input, mV.</param>
    /// <returns>0 to <see cref="FullScale"/>, or <see cref="Failed"/>.</returns>
    public int Convert(double millivolts)
    {
        if (IsFailing)
        {
            return Failed;
        }

        if (IsFrozen && _latest != Failed)
        {
            return _latest;
        }

        if (DropOutProbability > 0.0 && _random.NextDouble() < DropOutProbability)
        {
            return _random.NextDouble() < 0.5 ? 0 : _fullScale;
        }

        double counts = millivolts * _countsPerMillivolt;
        if (counts < _firstStraight)
        {
            double below = _firstStraight - counts;
            counts -= below * below * _lowBend;
        }
        else if (counts > _lastStraight)
        {
            double above = counts - _lastStraight;
            counts += above * above * _highBend;
        }

        // A bow has no effect at either rail, so that a rail stays a rail.
        double part = Math.Clamp(counts / _fullScale, 0.0, 1.0);
        counts += 4.0 * BowCounts * part * (1.0 - part);
        if (_steps != null)
        {
            counts += _steps[(int)Math.Clamp(counts, 0.0, _fullScale)];
        }

        _latest = (int)(Math.Clamp(counts, 0.0, _fullScale) + 0.5);
        return _latest;
    }

    private void Recompute()
    {
        _countsPerMillivolt = 1000.0 / _microvoltsPerCount;
        _firstStraight = Math.Max(0.0, UsableFromMillivolts * _countsPerMillivolt);
        _lastStraight = Math.Min(_fullScale, UsableToMillivolts * _countsPerMillivolt);

        // Bend so that half the lower band already reads 0, and three quarters of the upper band full scale.
        double above = 0.75 * (_fullScale - _lastStraight);
        _lowBend = _firstStraight > 0.0 ? 2.0 / _firstStraight : 0.0;
        _highBend = above > 0.0 ? (_fullScale - _lastStraight - above) / (above * above) : 0.0;
    }
}
