namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// A rectifier with active power-factor correction: its current follows the voltage but for a gap at the zero crossing. Before
/// that its capacitor is charged through a resistor, and for a moment nothing flows.
/// </summary>
public sealed class ActiveRectifier : LoadEquations
{
    private const double Peak = 1.4142135623730951;
    private const double Gap = 0.08;
    private const double Third = 0.05;
    private const double Charged = 0.9;

    private readonly double[] _shape = new double[Steps];
    private double _volts;
    private double _seconds;
    private bool _isCharging;

    /// <summary>Gets the first peak with an empty capacitor over the running peak, 1 to 10.</summary>
    public double StartMultiple { get; init; } = 3.0;

    /// <summary>Gets the time constant of charging, s.</summary>
    public double ChargeSeconds { get; init; } = 0.005;

    /// <summary>Gets the time from switching on to what it feeds, s.</summary>
    public double WaitSeconds { get; init; } = 0.1;

    /// <summary>Gets the time in which what it feeds comes up, s.</summary>
    public double RampSeconds { get; init; } = 0.3;

    /// <inheritdoc/>
    public override bool IsOnItsWay => _seconds < WaitSeconds + RampSeconds;

    /// <inheritdoc/>
    public override void Begin(double restSeconds, double coastSeconds, int step)
    {
        _volts = Peak * RunDown(_volts / Peak, restSeconds, coastSeconds);
        _seconds = 0.0;
        _isCharging = true;
    }

    /// <inheritdoc/>
    public override double Step(int step, double factor)
    {
        _seconds += StepSeconds;
        double over = (Math.Abs(Volts(step)) * factor) - _volts;
        double charging = 0.0;
        if (_isCharging && over > 0.0)
        {
            _volts += over * Math.Min(1.0, StepSeconds / ChargeSeconds);
            charging = StartMultiple * over * Math.Sign(Volts(step));
            _isCharging = _volts < Charged * Peak * factor;
        }

        if (_seconds < WaitSeconds || _isCharging)
        {
            return charging;
        }

        double part = IsOnItsWay ? (_seconds - WaitSeconds) / RampSeconds : 1.0;
        return charging + (part * Load * factor * _shape[step & (Steps - 1)]);
    }

    /// <inheritdoc/>
    protected override void Solve(double hertz)
    {
        double squares = 0.0;
        for (int i = 0; i < Steps; i++)
        {
            double sine = Volts(i) / Peak;
            double third = (3.0 * sine) - (4.0 * sine * sine * sine);
            _shape[i] = Math.Abs(sine) <= Gap ? 0.0 : sine + (Third * third);
            squares += _shape[i] * _shape[i];
        }

        double rms = Math.Sqrt(squares / Steps);
        for (int i = 0; i < Steps; i++)
        {
            _shape[i] /= rms;
        }
    }

    /// <inheritdoc/>
    protected override void SolveLoad()
    {
        // Its shape stays the same.
    }
}
