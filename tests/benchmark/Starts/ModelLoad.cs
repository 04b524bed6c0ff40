using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>A load of the virtual shop by its equations.</summary>
/// <param name="model">The load.</param>
/// <param name="hertz">Mains frequency.</param>
internal sealed class ModelLoad(LoadModel model, double hertz) : StartLoad
{
    // Long enough for any motor to come to rest and any filament to cool.
    private const long RestMicroseconds = 600_000_000;

    private Mains _mains = new(hertz, 230, 0);
    private double _factor;
    private long _now;

    /// <inheritdoc/>
    public override double SettledAmperes => model.SettledAmperes;

    /// <inheritdoc/>
    public override double Next()
    {
        MainsPoint point = _mains.At(_now);
        double amperes = model.Current(_now, point with { Factor = _factor });
        _now += (long)(1e6 * Step);
        return amperes;
    }

    /// <inheritdoc/>
    protected override void Begin(double turn, double factor)
    {
        model.Switch(false, _now);
        _now += RestMicroseconds;
        _mains = new Mains(hertz, 230, 360 * turn);
        _factor = factor;
        model.Switch(true, _now);
    }
}
