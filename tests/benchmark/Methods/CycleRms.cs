using NanoDustSwitch.Benchmarks.Lines;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>Common practice, no source: the rms of a cycle of 50 Hz by running sums, of the noise as well.</summary>
/// <param name="rate">Readings a second.</param>
internal sealed class CycleRms(int rate) : BlockMethod(8)
{
    private double _sum;
    private double _squares;
    private int _taken;

    /// <inheritdoc/>
    public override string Name => "rms of a cycle";

    /// <inheritdoc/>
    public override int Freedom => (rate / 50) - 1;

    /// <inheritdoc/>
    protected override void Add(int reading)
    {
        double distance = reading - Line.RestCounts;
        _sum += distance;
        _squares += distance * distance;
        _taken++;
    }

    /// <inheritdoc/>
    protected override double End()
    {
        double square = (_squares - (_sum * _sum / _taken)) / _taken;
        _sum = 0;
        _squares = 0;
        _taken = 0;
        return Math.Sqrt(square) / Line.CountsAnAmpere;
    }
}
