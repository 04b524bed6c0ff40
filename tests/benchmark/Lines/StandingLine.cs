using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>The readings of a line on which loads come and go, through the shop's own sensor and converter.</summary>
internal sealed class StandingLine
{
    private readonly List<Load> _loads = [];
    private readonly int _rate;
    private readonly double _offset;
    private long _bucket;
    private long _taken;

    /// <summary>Initializes a new instance of the <see cref="StandingLine"/> class, with white noise of 0.13 A alone.</summary>
    /// <param name="rate">Readings a second.</param>
    /// <param name="hertz">Mains frequency.</param>
    /// <param name="random">All chance.</param>
    public StandingLine(int rate, double hertz, ShopRandom random)
    {
        _rate = rate;
        _offset = random.NextDouble();
        Mains = new Mains(hertz, 120, 360 * random.NextDouble());
        Sensor = new CurrentSensor(SensorKind.Transformer, random);
        Converter = new Converter(random);
    }

    /// <summary>Gets the mains.</summary>
    public Mains Mains { get; }

    /// <summary>Gets the sensor.</summary>
    public CurrentSensor Sensor { get; }

    /// <summary>Gets the converter.</summary>
    public Converter Converter { get; }

    /// <summary>Gets the end of the bucket that was filled last, s.</summary>
    public double Seconds => _bucket / (double)Bucket.ASecond;

    /// <summary>Puts a load on the line.</summary>
    /// <param name="current">Its current at a point of the mains cycle, at 1 A rms.</param>
    /// <param name="amperes">Its size over the time in s since it was switched on, A rms.</param>
    /// <param name="from">When it is switched on, s.</param>
    /// <param name="to">When it is switched off, s.</param>
    public void Add(Func<MainsPoint, double> current, Func<double, double> amperes, double from, double to) =>
        _loads.Add(new Load(current, amperes, from, to));

    /// <summary>A sine behind the voltage.</summary>
    /// <param name="degrees">By how much, degrees.</param>
    /// <returns>Its current at 1 A rms.</returns>
    public static Func<MainsPoint, double> Sine(double degrees)
    {
        (double sine, double cosine) = Math.SinCos(degrees * Math.PI / 180);
        return point => Math.Sqrt(2) * ((point.Sine * cosine) - (point.Cosine * sine));
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
            long now = (long)(seconds * 1e6);
            MainsPoint point = Mains.At(now);
            double amperes = 0;
            foreach (Load load in _loads)
            {
                if (seconds >= load.From && seconds < load.To)
                {
                    amperes += load.Amperes(seconds - load.From) * load.Current(point);
                }
            }

            Sensor.Follow(now, amperes, 0, point);
            readings[count++] = Converter.Convert(Sensor.Millivolts());
        }

        return count;
    }

    private sealed record Load(Func<MainsPoint, double> Current, Func<double, double> Amperes, double From, double To);
}
