using NanoDustSwitch.Benchmarks.Lines;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>Tried: the swing of quarter-cycle means, of two buckets each, over a cycle of 50 Hz.</summary>
internal sealed class QuarterSwing : Method
{
    private const int Length = 8;

    // Of a sine's swing, at any place on the cycle, at 50 and 60 Hz: about the middle.
    private const double KeptByQuarterMeans = 0.859;

    private readonly double[] _means = new double[Length];
    private int _taken;
    private int _lastSum;
    private int _lastCount;

    /// <inheritdoc/>
    public override string Name => "tried: swing of quarter-cycle means";

    /// <inheritdoc/>
    public override double Window => 0.0225;

    /// <inheritdoc/>
    public override bool Accept(int[] readings, int count)
    {
        int sum = 0;
        for (int i = 0; i < count; i++)
        {
            sum += readings[i];
        }

        _means[_taken++ % Length] = (double)(_lastSum + sum) / (_lastCount + count);
        _lastSum = sum;
        _lastCount = count;
        Answer = (_means.Max() - _means.Min()) / (2 * Math.Sqrt(2)) / Line.CountsAnAmpere / KeptByQuarterMeans;
        return _taken > Length;
    }
}
