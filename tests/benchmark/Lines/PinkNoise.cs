using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>
/// Noise whose power falls as 1/f from a tenth of a hertz up: white noise through first-order filters whose corners stand evenly
/// on a logarithmic scale. Textbook method.
/// </summary>
internal sealed class PinkNoise : INoise
{
    private const double LowestHertz = 0.1;
    private const double CornerRatio = 3;

    private readonly ShopRandom _random;
    private readonly double[] _keeps;
    private readonly double[] _gains;
    private readonly double[] _states;

    /// <summary>Initializes a new instance of the <see cref="PinkNoise"/> class.</summary>
    /// <param name="rate">Values a second.</param>
    /// <param name="random">Where it is drawn from.</param>
    public PinkNoise(double rate, ShopRandom random)
    {
        _random = random;
        int filters = 1 + (int)Math.Ceiling(Math.Log(rate / 2 / LowestHertz, CornerRatio));
        double[] corners = [.. Enumerable.Range(0, filters).Select(i => LowestHertz * Math.Pow(CornerRatio, i))];
        _keeps = [.. corners.Select(corner => Math.Exp(-2 * Math.PI * corner / rate))];
        _gains = [.. _keeps.Zip(corners, (keep, corner) => (1 - keep) / Math.Sqrt(corner))];
        _states = new double[filters];
        double power = 0;
        for (int i = 0; i < filters; i++)
        {
            for (int k = 0; k < filters; k++)
            {
                power += _gains[i] * _gains[k] / (1 - (_keeps[i] * _keeps[k]));
            }
        }

        _gains = [.. _gains.Select(gain => gain / Math.Sqrt(power))];
    }

    /// <inheritdoc/>
    public double Next()
    {
        double white = _random.NextGaussian();
        double sum = 0;
        for (int i = 0; i < _states.Length; i++)
        {
            _states[i] = (_keeps[i] * _states[i]) + (_gains[i] * white);
            sum += _states[i];
        }

        return sum;
    }
}
