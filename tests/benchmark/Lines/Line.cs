using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>The readings of a line: noise, and at times a tool, through the default sensor and a 12-bit converter.</summary>
internal sealed class Line
{
    /// <summary>Noise of the line, A rms.</summary>
    public const double NoiseAmperes = 0.13;

    /// <summary>Greatest count of the converter.</summary>
    public const int FullScale = 4095;

    /// <summary>Size of a count, µV.</summary>
    public const int MicrovoltsACount = 806;

    /// <summary>Gain of the sensor, µV/A.</summary>
    public const int MicrovoltsAnAmpere = 23_500;

    /// <summary>Counts of an ampere.</summary>
    public const double CountsAnAmpere = (double)MicrovoltsAnAmpere / MicrovoltsACount;

    /// <summary>Where the line rests, counts.</summary>
    public const double RestCounts = RestMillivolts * 1000 / MicrovoltsACount;

    /// <summary>Most readings in a bucket.</summary>
    public const int MostReadings = 64;

    private const double RestMillivolts = 1270;
    private const double HumAmperes = 0.05;
    private const double StepErrorCounts = 7;
    private const long StepErrorSeed = 7;

    private readonly int _rate;
    private readonly double _hertz;
    private readonly ShopRandom _random;
    private readonly Converter _converter;
    private readonly INoise _noise;
    private readonly double _amperes;
    private readonly double _hum;
    private readonly Shape _humShape;
    private readonly double _offset;
    private long _bucket;
    private long _taken;
    private Shape? _shape;
    private double _toolAmperes;
    private double _toolTurns;
    private double _from;
    private double _to;

    /// <summary>Initializes a new instance of the <see cref="Line"/> class, without a tool.</summary>
    /// <param name="rate">Readings a second.</param>
    /// <param name="hertz">Mains frequency.</param>
    /// <param name="kind">The noise.</param>
    /// <param name="times">Its size against the nominal.</param>
    /// <param name="random">All chance.</param>
    /// <param name="recording">The recording, for recorded noise.</param>
    public Line(int rate, double hertz, NoiseKind kind, double times, ShopRandom random, double[] recording)
    {
        _rate = rate;
        _hertz = hertz;
        _random = random;
        _offset = random.NextDouble();
        _amperes = NoiseAmperes * times;
        _hum = kind == NoiseKind.Hum ? HumAmperes * times : 0;
        _humShape = Shape.Sine();

        // The steps of one and the same converter, whatever the seed: it is taught and used.
        _converter = new Converter(new ShopRandom(StepErrorSeed, 0)) { BowCounts = 0 };
        if (kind == NoiseKind.StepErrors)
        {
            _converter.SetStepErrors(StepErrorCounts);
        }

        _noise = kind switch
        {
            NoiseKind.Pink => new PinkNoise(rate, random),
            NoiseKind.Recorded => new PiecedNoise(recording, random),
            _ => new WhiteNoise(random),
        };
    }

    /// <summary>Gets the end of the bucket that was filled last, s.</summary>
    public double Seconds => _bucket / (double)Bucket.ASecond;

    /// <summary>Puts a tool on the line, at any point of the cycle.</summary>
    /// <param name="shape">Its current at 1 A rms.</param>
    /// <param name="amperes">Its current, A rms.</param>
    /// <param name="from">When it begins, s.</param>
    /// <param name="to">When it ends, s.</param>
    public void Tool(Shape shape, double amperes, double from, double to)
    {
        _shape = shape;
        _toolAmperes = amperes;
        _toolTurns = _random.NextDouble();
        _from = from;
        _to = to;
    }

    /// <summary>Takes the readings of the next bucket.</summary>
    /// <param name="readings">Where to.</param>
    /// <returns>How many came.</returns>
    public int Fill(int[] readings)
    {
        _bucket++;
        double end = (double)_bucket * _rate / Bucket.ASecond;
        int count = 0;
        for (; _taken + _offset < end; _taken++)
        {
            double seconds = (_taken + _offset) / _rate;
            double amperes = _amperes * _noise.Next();
            if (_shape is { } shape && seconds >= _from && seconds < _to)
            {
                amperes += _toolAmperes * shape.At(_toolTurns + ((seconds - _from) * _hertz));
            }

            if (_hum > 0)
            {
                amperes += _hum * _humShape.At(seconds * _hertz);
            }

            readings[count++] = _converter.Convert(RestMillivolts + (amperes * MicrovoltsAnAmpere / 1000.0));
        }

        return count;
    }
}
