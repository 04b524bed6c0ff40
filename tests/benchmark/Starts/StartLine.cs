using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>Takes the buckets of a line as a board does, with the default sensor's noise, and its converter.</summary>
internal sealed class StartLine
{
    private const double RestMillivolts = 1270;
    private const double TransformerMillivolts = 23.5;

    // As in the firmware's bucket reader: the hole moves about, so that it hides nothing for good.
    private const int Places = 17;
    private const int Stride = 7;
    private const double PlaceSeconds = 75e-6;

    private readonly StartPace _pace;
    private readonly ShopRandom _random;
    private readonly Converter _converter;
    private readonly BucketFiller _filler = new(Line.FullScale);
    private readonly int[] _readings = new int[256];
    private readonly double[] _amperes;
    private double _next;
    private double _end;
    private int _place;

    /// <summary>Initializes a new instance of the <see cref="StartLine"/> class.</summary>
    /// <param name="pace">The board's pace.</param>
    /// <param name="random">Noise.</param>
    public StartLine(StartPace pace, ShopRandom random)
    {
        _pace = pace;
        _random = random;
        _converter = new Converter(random);
        Steps = (int)Math.Round(pace.BucketSeconds / StartLoad.Step);
        _amperes = new double[Steps + 1];
    }

    /// <summary>Gets the steps of a load in a bucket.</summary>
    public int Steps { get; }

    /// <summary>Gets the bucket.</summary>
    public Bucket Bucket { get; } = new();

    /// <summary>Gets the end of the last bucket, s.</summary>
    public double Seconds => _end;

    /// <summary>Takes the next bucket.</summary>
    /// <param name="amperes">Gives the current step by step.</param>
    public void Take(Func<double> amperes)
    {
        double begin = _end;
        _end += _pace.BucketSeconds;
        _amperes[0] = _amperes[Steps];
        for (int i = 1; i <= Steps; i++)
        {
            _amperes[i] = amperes();
        }

        _place = (_place + Stride) % Places;
        double hole = begin + (_place * PlaceSeconds);
        int count = 0;
        while (_next < _end)
        {
            if (_next >= hole && _next < hole + _pace.HoleSeconds)
            {
                _next = hole + _pace.HoleSeconds;
                continue;
            }

            double at = Math.Max(0, (_next - begin) / StartLoad.Step);
            int step = Math.Min((int)at, Steps - 1);
            double current = _amperes[step] + ((at - step) * (_amperes[step + 1] - _amperes[step]));
            double noisy = current + (Line.NoiseAmperes * _random.NextGaussian());
            _readings[count++] = _converter.Convert(RestMillivolts + (noisy * TransformerMillivolts));
            _next += _pace.ReadingSeconds;
        }

        _filler.Fill(_readings, count, (long)Math.Round(_end * 1e6), Bucket);
    }
}
