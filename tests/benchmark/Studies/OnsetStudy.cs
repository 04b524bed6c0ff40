using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>
/// Tools of many currents that come at any moment and point of the cycle: when each method starts at its level, and what it
/// answers once its window is full of the tool.
/// </summary>
internal sealed class OnsetStudy
{
    private const int Parts = 16;

    private readonly double[] _currents;
    private readonly double[][][] _delays;
    private readonly double[][][] _answers;

    private OnsetStudy(double[] currents, double[][][] delays, double[][][] answers)
    {
        _currents = currents;
        _delays = delays;
        _answers = answers;
    }

    /// <summary>Gets the currents, A rms, from the least up.</summary>
    public IReadOnlyList<double> Currents => _currents;

    /// <summary>Lets tools come.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="rate">Readings a second.</param>
    /// <param name="hertz">Mains frequency.</param>
    /// <param name="shape">The tool's current.</param>
    /// <param name="currents">Its size, A rms, from the least up.</param>
    /// <param name="trials">Tools of each current.</param>
    /// <param name="horizon">How long each is waited for, s.</param>
    /// <param name="levels">Each method's level, A.</param>
    /// <param name="make">Makes the methods.</param>
    /// <returns>What they did.</returns>
    public static OnsetStudy Run(
        Bench bench,
        int rate,
        double hertz,
        Shape shape,
        double[] currents,
        int trials,
        double horizon,
        double[] levels,
        Func<Method[]> make)
    {
        double[][][] delays = Table(currents, levels.Length, trials);
        double[][][] answers = Table(currents, levels.Length, trials);
        double lead = make().Max(method => method.Window) + 0.1;
        string name = $"{trials:#,0} tools of {currents.Length} currents, {shape.Name}, {hertz} Hz, {rate:#,0} a second";
        bench.InParallel(name, Parts, (part, random) =>
        {
            int[] readings = new int[Line.MostReadings];
            for (int current = 0; current < currents.Length; current++)
            {
                for (int trial = part; trial < trials; trial += Parts)
                {
                    Method[] methods = make();
                    Line line = new(rate, hertz, NoiseKind.White, 1, random, bench.Recording);

                    // At any place of the blocks of those that work in blocks.
                    double onset = lead + (random.NextDouble() * 0.5 * lead);
                    line.Tool(shape, currents[current], onset, double.PositiveInfinity);
                    Wait(line, methods, readings, levels, onset, horizon, (method, delay, answer) =>
                    {
                        delays[method][current][trial] = delay;
                        answers[method][current][trial] = answer;
                    });
                }
            }
        });
        return new OnsetStudy(currents, delays, answers);
    }

    /// <summary>The chance that a method starts in a time.</summary>
    /// <param name="method">Its place.</param>
    /// <param name="current">The current's place.</param>
    /// <param name="seconds">The time, s.</param>
    public double Found(int method, int current, double seconds) => Part(_delays[method][current], delay => delay <= seconds);

    /// <summary>The smallest current that a method finds in a time with 90 %.</summary>
    /// <param name="method">Its place.</param>
    /// <param name="seconds">The time, s.</param>
    /// <returns>A; not a number where no current is found.</returns>
    public double Smallest(int method, double seconds) => Crossing.Of(_currents, current => Found(method, current, seconds));

    /// <summary>The chance that an answer with a window full of the tool reaches a level.</summary>
    /// <param name="method">Its place.</param>
    /// <param name="current">The current's place.</param>
    /// <param name="level">The level, A.</param>
    public double Reaches(int method, int current, double level) => Part(_answers[method][current], answer => answer >= level);

    /// <summary>The smallest current whose answer reaches a level with 90 %.</summary>
    /// <param name="method">Its place.</param>
    /// <param name="level">The level, A.</param>
    /// <returns>A.</returns>
    public double SmallestToReach(int method, double level) => Crossing.Of(_currents, current => Reaches(method, current, level));

    private static void Wait(
        Line line,
        Method[] methods,
        int[] readings,
        double[] levels,
        double onset,
        double horizon,
        Action<int, double, double> tell)
    {
        int[] run = new int[methods.Length];
        double[] delays = new double[methods.Length];
        double[] answers = new double[methods.Length];
        Array.Fill(delays, double.PositiveInfinity);
        Array.Fill(answers, double.NaN);
        double last = onset + Math.Max(horizon, methods.Max(method => 2 * method.Window));
        while (line.Seconds < last)
        {
            int count = line.Fill(readings);
            double now = line.Seconds;
            for (int i = 0; i < methods.Length; i++)
            {
                if (!methods[i].Accept(readings, count))
                {
                    continue;
                }

                run[i] = methods[i].Answer >= levels[i] ? run[i] + 1 : 0;
                if (now > onset && run[i] >= methods[i].Confirm && double.IsInfinity(delays[i]))
                {
                    delays[i] = now - onset;
                }

                if (now >= onset + methods[i].Window && double.IsNaN(answers[i]))
                {
                    answers[i] = methods[i].Answer;
                }
            }
        }

        for (int i = 0; i < methods.Length; i++)
        {
            tell(i, delays[i], answers[i]);
        }
    }

    private static double Part(double[] values, Func<double, bool> isSo) => values.Count(isSo) / (double)values.Length;

    private static double[][][] Table(double[] currents, int methods, int trials) =>
        [.. Enumerable.Range(0, methods).Select(_ => currents.Select(_ => new double[trials]).ToArray())];
}
