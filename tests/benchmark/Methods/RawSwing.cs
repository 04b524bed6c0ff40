using NanoDustSwitch.Benchmarks.Lines;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>Common practice, no source: greatest less least reading of a cycle of 50 Hz.</summary>
internal sealed class RawSwing() : BlockMethod(8)
{
    private int _least = int.MaxValue;
    private int _greatest = int.MinValue;

    /// <inheritdoc/>
    public override string Name => "raw swing of a cycle";

    /// <inheritdoc/>
    protected override void Add(int reading)
    {
        _least = Math.Min(_least, reading);
        _greatest = Math.Max(_greatest, reading);
    }

    /// <inheritdoc/>
    protected override double End()
    {
        double swing = _greatest - _least;
        _least = int.MaxValue;
        _greatest = int.MinValue;
        return swing / (2 * Math.Sqrt(2)) / Line.CountsAnAmpere;
    }
}
