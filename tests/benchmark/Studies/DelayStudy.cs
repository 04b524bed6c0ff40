using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;
using MathStatistics = MathNet.Numerics.Statistics.Statistics;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>How long after a tool's current begins or ends each method says so.</summary>
internal sealed class DelayStudy
{
    private const int Parts = 8;
    private const double Running = 0.8;

    // More than two seconds a tool: the core would stretch the run-on of more than thirty starts a minute.
    private const double Idle = 1.5;
    private const double MoreIdle = 0.5;

    private readonly double[][] _starts;
    private readonly double[][] _stops;

    private DelayStudy(double[][] starts, double[][] stops)
    {
        _starts = starts;
        _stops = stops;
    }

    /// <summary>Lets tools come and go.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="rate">Readings a second.</param>
    /// <param name="hertz">Mains frequency.</param>
    /// <param name="amperes">Current of the tool, A rms; a sine.</param>
    /// <param name="trials">How many.</param>
    /// <param name="make">Makes those that decide.</param>
    /// <returns>The delays.</returns>
    public static DelayStudy Run(Bench bench, int rate, double hertz, double amperes, int trials, Func<IDecider[]> make)
    {
        int deciders = make().Length;
        double[][] starts = [.. Enumerable.Range(0, deciders).Select(_ => new double[trials])];
        double[][] stops = [.. Enumerable.Range(0, deciders).Select(_ => new double[trials])];
        Shape shape = Shape.Sine();
        string name = $"{trials:#,0} tools of {amperes} A come and go, {hertz} Hz, {rate:#,0} a second";
        bench.InParallel(name, Parts, (part, random) =>
        {
            IDecider[] own = make();
            Line line = new(rate, hertz, NoiseKind.White, 1, random, bench.Recording);
            int[] readings = new int[Line.MostReadings];
            bool[] isOn = new bool[deciders];
            for (int trial = part; trial < trials; trial += Parts)
            {
                double from = line.Seconds + Idle + (MoreIdle * random.NextDouble());
                double to = from + Running + (0.1 * random.NextDouble());
                line.Tool(shape, amperes, from, to);
                for (int i = 0; i < deciders; i++)
                {
                    (starts[i][trial], stops[i][trial]) = (double.PositiveInfinity, double.NaN);
                }

                while (line.Seconds < to + Idle)
                {
                    int count = line.Fill(readings);
                    double now = line.Seconds;
                    for (int i = 0; i < deciders; i++)
                    {
                        isOn[i] = own[i].Accept(readings, count);
                        if (now > from && isOn[i])
                        {
                            starts[i][trial] = Math.Min(starts[i][trial], now - from);
                        }

                        // Who does not see the tool at its end has no stop to tell.
                        if (now <= to)
                        {
                            stops[i][trial] = isOn[i] ? double.PositiveInfinity : double.NaN;
                        }
                        else if (!isOn[i])
                        {
                            stops[i][trial] = Math.Min(stops[i][trial], now - to);
                        }
                    }
                }
            }
        });
        return new DelayStudy(starts, stops);
    }

    /// <summary>What a part of the starts does not exceed.</summary>
    /// <param name="decider">Whose.</param>
    /// <param name="part">The part, 0 to 1.</param>
    /// <returns>Seconds.</returns>
    public double Start(int decider, double part) => MathStatistics.Quantile(_starts[decider], part);

    /// <summary>What a part of the stops does not exceed; not a number where fewer than half of the tools were seen.</summary>
    /// <param name="decider">Whose.</param>
    /// <param name="part">The part, 0 to 1.</param>
    /// <returns>Seconds.</returns>
    public double Stop(int decider, double part)
    {
        double[] seen = [.. _stops[decider].Where(stop => !double.IsNaN(stop))];
        return 2 * seen.Length < _stops[decider].Length ? double.NaN : MathStatistics.Quantile(seen, part);
    }
}
