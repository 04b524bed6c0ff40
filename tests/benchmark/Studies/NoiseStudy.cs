using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;
using NanoDustSwitch.Detection;
using MathStatistics = MathNet.Numerics.Statistics.Statistics;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>Hours of a line without a tool, in parts that know nothing of each other, so that they tell the error.</summary>
internal sealed class NoiseStudy
{
    /// <summary>Parts.</summary>
    public const int Parts = 10;

    private readonly TailCount[][] _counts;
    private readonly Method[] _methods;

    private NoiseStudy(Method[] methods, TailCount[][] counts)
    {
        _methods = methods;
        _counts = counts;
    }

    /// <summary>Looks at the noise.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="rate">Readings a second.</param>
    /// <param name="kind">The noise.</param>
    /// <param name="times">Its size against the nominal.</param>
    /// <param name="hours">How long.</param>
    /// <param name="make">Makes the methods.</param>
    /// <returns>What they did.</returns>
    public static NoiseStudy Run(Bench bench, int rate, NoiseKind kind, double times, double hours, Func<Method[]> make)
    {
        TailCount[][] counts = new TailCount[Parts][];
        long buckets = (long)(hours * 3600 * Bucket.ASecond / Parts);
        bench.InParallel($"{hours:0.#} h of {NoiseNames.Of(kind)}, {rate:#,0} a second", Parts, (part, random) =>
        {
            Method[] methods = make();
            TailCount[] own = [.. methods.Select(method => new TailCount(method.Confirm))];
            Line line = new(rate, Bench.Hertz, kind, times, random, bench.Recording);
            int[] readings = new int[Line.MostReadings];
            for (long i = 0; i < buckets; i++)
            {
                int count = line.Fill(readings);
                for (int k = 0; k < methods.Length; k++)
                {
                    if (methods[k].Accept(readings, count))
                    {
                        own[k].Add(methods[k]);
                    }
                }
            }

            foreach (TailCount one in own)
            {
                one.Lasted(line.Seconds);
            }

            counts[part] = own;
        });
        return new NoiseStudy(make(), counts);
    }

    /// <summary>The law of a method's false starts.</summary>
    /// <param name="method">Its place.</param>
    public TailLaw Law(int method) => new(Count(method, -1), _methods[method].Freedom);

    /// <summary>The level that a part of its answers reaches.</summary>
    /// <param name="method">Its place.</param>
    /// <param name="part">The part.</param>
    /// <returns>A.</returns>
    public double Reached(int method, double part) => Count(method, -1).Reached(part);

    /// <summary>Standard error of the level of a rate: each part is left out once (jackknife).</summary>
    /// <param name="method">Its place.</param>
    /// <param name="rate">False starts a second.</param>
    /// <returns>A.</returns>
    public double Error(int method, double rate)
    {
        double[] levels =
        [
            .. Enumerable.Range(0, Parts).Select(part => new TailLaw(Count(method, part), _methods[method].Freedom).Level(rate)),
        ];
        return MathStatistics.PopulationStandardDeviation(levels) * Math.Sqrt(Parts - 1);
    }

    private TailCount Count(int method, int without)
    {
        TailCount sum = new(_methods[method].Confirm);
        for (int part = 0; part < Parts; part++)
        {
            if (part != without)
            {
                sum.Add(_counts[part][method]);
            }
        }

        return sum;
    }
}
