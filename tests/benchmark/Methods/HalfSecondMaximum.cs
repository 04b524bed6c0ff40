using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>Common practice, no source: the greatest distance from the middle in half a second.</summary>
internal sealed class HalfSecondMaximum() : BlockMethod(Bucket.ASecond / 2)
{
    private double _greatest;

    /// <inheritdoc/>
    public override string Name => "half-second maximum";

    /// <inheritdoc/>
    public override int Freedom => 1;

    /// <inheritdoc/>
    protected override void Add(int reading) => _greatest = Math.Max(_greatest, Math.Abs(reading - Line.RestCounts));

    /// <inheritdoc/>
    protected override double End()
    {
        double peak = _greatest;
        _greatest = 0;
        return peak / Math.Sqrt(2) / Line.CountsAnAmpere;
    }
}
