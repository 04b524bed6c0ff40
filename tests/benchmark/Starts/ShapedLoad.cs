namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>A sine whose height is a function of the time since the switch closed.</summary>
/// <param name="hertz">Mains frequency.</param>
/// <param name="rms">Rms current in A by the time in s.</param>
internal sealed class ShapedLoad(double hertz, Func<double, double> rms) : StartLoad
{
    private double _turn;
    private double _factor;
    private int _step;

    /// <inheritdoc/>
    public override double SettledAmperes => rms(double.PositiveInfinity);

    /// <inheritdoc/>
    public override double Next()
    {
        double seconds = _step++ * Step;
        return _factor * Math.Sqrt(2) * rms(seconds) * Math.Sin(2 * Math.PI * ((seconds * hertz) + _turn));
    }

    /// <inheritdoc/>
    protected override void Begin(double turn, double factor)
    {
        _turn = turn;
        _factor = factor;
        _step = 0;
    }
}
