using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>What was found at a rate of readings.</summary>
internal sealed class RateFindings
{
    /// <summary>Chance of a false alarm in a window, for the comparison of single windows.</summary>
    public const double FalseAlarm = 1e-4;

    private const double Horizon = 1;
    private const double ShortHorizon = 0.05;

    private static readonly double[] s_hertz = [50, 60];

    private static readonly Func<double, Shape>[] s_shapes =
        [_ => Shape.Sine(), _ => Shape.HalfWave(), hertz => Shape.Pulses(hertz), _ => Shape.Chopped()];

    private RateFindings(int rate)
    {
        Rate = rate;
        Methods = MethodSet.All(rate);
    }

    /// <summary>Gets the readings a second.</summary>
    public int Rate { get; }

    /// <summary>Gets the methods.</summary>
    public Method[] Methods { get; }

    /// <summary>Gets each method's level for one false alarm in 10⁴ answers, A.</summary>
    public double[] AlarmLevels { get; private set; } = [];

    /// <summary>Gets each method's level for one false start a year, A.</summary>
    public double[] YearLevels { get; private set; } = [];

    /// <summary>Gets the standard errors of those, A.</summary>
    public double[] YearErrors { get; private set; } = [];

    /// <summary>Gets the tools of 60 Hz, for all methods.</summary>
    public OnsetStudy Sine { get; private set; } = null!;

    /// <summary>Gets the tools of every shape at 50 and at 60 Hz, for the short methods.</summary>
    public Dictionary<(string Shape, double Hertz), OnsetStudy> Shapes { get; } = [];

    /// <summary>Gets the tools of 50 Hz, for ours.</summary>
    public OnsetStudy SineAt50 { get; private set; } = null!;

    /// <summary>Finds it.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="rate">Readings a second.</param>
    /// <param name="spend">How much is looked at.</param>
    /// <returns>What was found.</returns>
    public static RateFindings Run(Bench bench, int rate, Spend spend)
    {
        RateFindings found = new(rate);
        found.SetLevels(NoiseStudy.Run(bench, rate, NoiseKind.White, 1, spend.NoiseHours, () => MethodSet.All(rate)));
        found.Sine = OnsetStudy.Run(
            bench,
            rate,
            Bench.Hertz,
            Shape.Sine(),
            spend.Currents(0.03, 0.75),
            spend.Trials,
            Horizon,
            found.YearLevels,
            () => MethodSet.All(rate));
        found.SineAt50 = OnsetStudy.Run(
            bench, rate, 50, Shape.Sine(), spend.Currents(0.03, 0.3), spend.Trials, 0.4, found.YearLevels[..2], MethodSet.Ours);
        double[] levels = [found.YearLevels[MethodSet.Fast], .. found.YearLevels[^MethodSet.Tried().Length..]];
        foreach (double hertz in s_hertz)
        {
            foreach (Func<double, Shape> make in s_shapes)
            {
                Shape shape = make(hertz);
                found.Shapes[(shape.Name, hertz)] = OnsetStudy.Run(
                    bench, rate, hertz, shape, spend.Currents(0.1, 0.7), spend.Trials, ShortHorizon, levels, MethodSet.Short);
            }
        }

        return found;
    }

    /// <summary>The smallest current that a short method finds in two cycles: the worse of 50 and 60 Hz.</summary>
    /// <param name="shape">Its shape's name.</param>
    /// <param name="method">Place among the short methods.</param>
    /// <returns>A.</returns>
    public double InTwoCycles(string shape, int method) =>
        s_hertz.Max(hertz => Shapes[(shape, hertz)].Smallest(method, 2 / hertz));

    /// <summary>The smallest current that a method tells from noise by one window, at one false alarm in 10⁴.</summary>
    /// <param name="method">Its place.</param>
    /// <returns>A.</returns>
    public double ByOneWindow(int method) => Sine.SmallestToReach(method, AlarmLevels[method]);

    /// <summary>How much more power that takes than the best detector would need of the same readings.</summary>
    /// <param name="method">Its place.</param>
    /// <returns>dB.</returns>
    public double Loss(int method) =>
        20 * Math.Log10(ByOneWindow(method) / Bound.Amperes(Rate * Methods[method].Window, FalseAlarm));

    private void SetLevels(NoiseStudy noise)
    {
        int[] places = [.. Enumerable.Range(0, Methods.Length)];
        AlarmLevels = [.. places.Select(method => noise.Reached(method, FalseAlarm))];
        YearLevels = [.. places.Select(method => noise.Law(method).Level(1 / Bound.Year))];
        YearErrors = [.. places.Select(method => noise.Error(method, 1 / Bound.Year))];
    }
}
