using MathNet.Numerics.LinearRegression;
using MathNet.Numerics.RootFinding;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>
/// False starts against the level, carried on beyond what was counted: the logarithm of their rate, less the power of the level
/// that belongs to the degrees of freedom, falls in a straight line with the square of the level. Extreme values of normal noise;
/// textbook.
/// </summary>
internal sealed class TailLaw
{
    // The line is laid through levels that were passed so often: seldom enough to be tail, often enough to count.
    private const int LeastCount = 8;
    private const int MostCount = 3000;
    private const int LeastPoints = 4;

    private readonly int _power;
    private readonly double _constant;
    private readonly double _slope;
    private readonly double _deepest;

    /// <summary>Initializes a new instance of the <see cref="TailLaw"/> class.</summary>
    /// <param name="count">What was counted.</param>
    /// <param name="freedom">Degrees of freedom of the tail.</param>
    public TailLaw(TailCount count, int freedom)
    {
        _power = freedom - 2;
        long[] starts = count.Starts();
        List<double[]> squares = [];
        List<double> logarithms = [];
        List<double> weights = [];
        int peak = Array.IndexOf(starts, starts.Max());
        for (int i = peak; i < starts.Length; i++)
        {
            // Levels between two answers that a method can give count the same; one of them is enough.
            if (starts[i] is >= LeastCount and <= MostCount && starts[i] != starts[i - 1])
            {
                double level = i * TailCount.Step;
                squares.Add([level * level]);
                logarithms.Add(Math.Log(starts[i] / count.Seconds) - (_power * Math.Log(level)));
                weights.Add(starts[i]);
                _deepest = level;
            }
        }

        if (squares.Count < LeastPoints)
        {
            throw new InvalidOperationException("Too little noise was looked at for its tail.");
        }

        double[] line = WeightedRegression.Weighted<double>([.. squares], [.. logarithms], [.. weights], intercept: true);
        (_constant, _slope) = (line[0], line[1]);
    }

    /// <summary>False starts a second at a level.</summary>
    /// <param name="level">The level, A.</param>
    public double Rate(double level) => Math.Exp(_constant + (_slope * level * level) + (_power * Math.Log(level)));

    /// <summary>The level at which starts are as rare.</summary>
    /// <param name="rate">False starts a second.</param>
    /// <returns>A.</returns>
    public double Level(double rate) =>
        Brent.FindRoot(level => Math.Log(Rate(level) / rate), _deepest / 2, _deepest * 4, 1e-7);
}
