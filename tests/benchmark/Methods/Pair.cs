using NanoDustSwitch.Benchmarks.Lines;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>
/// Tried: the strength of 50 Hz in the last eight bucket means, by a quadrature pair, and with it a share of that of the third
/// harmonic. The weights repeat every eight buckets, so that the resting point drops out; the bin is wide enough to serve 45 to
/// 65 Hz.
/// </summary>
/// <param name="name">Its name.</param>
/// <param name="third">Share of the third harmonic's power, 0 to 1.</param>
/// <param name="cycles">Cycles whose powers are summed.</param>
internal sealed class Pair(string name, double third, int cycles) : Method
{
    private const int Half = 4;

    // What is left of a sine in 2.5 ms means, at 50 Hz and at 60 Hz: the middle, as in SensorScale.
    private const double KeptByBucketMeans = 0.969;

    private static readonly double s_eighth = Math.Sqrt(0.5);

    // At a place of the half cycle: the means of one half cycle less those of the other. That leaves the odd harmonics.
    private readonly double[] _differences = new double[Half];
    private readonly double[] _means = new double[2 * Half];
    private readonly double[] _powers = new double[2 * Half * cycles];
    private int _taken;

    /// <inheritdoc/>
    public override string Name => name;

    /// <inheritdoc/>
    public override double Window => 0.02 * cycles;

    /// <inheritdoc/>
    public override int Freedom => (third > 0 ? 4 : 2) * cycles;

    /// <inheritdoc/>
    public override bool Accept(int[] readings, int count)
    {
        int sum = 0;
        for (int i = 0; i < count; i++)
        {
            sum += readings[i];
        }

        double mean = (double)sum / count;
        int at = _taken % (2 * Half);
        _differences[at % Half] += (mean - _means[at]) * (at < Half ? 1 : -1);
        _means[at] = mean;

        // The first and the third bin of a transform of eight, from the four differences.
        double even = s_eighth * (_differences[1] - _differences[3]);
        double odd = s_eighth * (_differences[1] + _differences[3]);
        double power = Square(_differences[0] + even) + Square(_differences[2] + odd)
            + (third * (Square(_differences[0] - even) + Square(odd - _differences[2])));
        _powers[_taken % _powers.Length] = power;
        double total = 0;
        for (int i = 0; i < cycles; i++)
        {
            total += _powers[(_taken + (2 * Half * i)) % _powers.Length];
        }

        Answer = Math.Sqrt(total / cycles) / Half / Math.Sqrt(2) / Line.CountsAnAmpere / KeptByBucketMeans;
        return ++_taken >= _powers.Length;
    }

    private static double Square(double value) => value * value;
}
