using NanoDustSwitch.Benchmarks.Lines;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>Tried: the swing of single bucket means over a cycle of 50 Hz.</summary>
internal sealed class BucketSwing : Method
{
    private const int Length = 8;

    // Of a sine's swing, at any place on the cycle, at 50 and 60 Hz: about the middle.
    private const double KeptByBucketMeans = 0.95;

    private readonly double[] _means = new double[Length];
    private int _taken;

    /// <inheritdoc/>
    public override string Name => "tried: swing of bucket means";

    /// <inheritdoc/>
    public override double Window => 0.02;

    /// <inheritdoc/>
    public override bool Accept(int[] readings, int count)
    {
        int sum = 0;
        for (int i = 0; i < count; i++)
        {
            sum += readings[i];
        }

        _means[_taken++ % Length] = (double)sum / count;
        Answer = (_means.Max() - _means.Min()) / (2 * Math.Sqrt(2)) / Line.CountsAnAmpere / KeptByBucketMeans;
        return _taken >= Length;
    }
}
