namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Electronics or a lamp first, the motor a moment later: two loads behind one switch.</summary>
/// <param name="first">What comes at once.</param>
/// <param name="firstPart">Its running current, as a part of the whole load's rated current, below 0.5.</param>
/// <param name="motor">What comes later; it takes the rest of the rated current.</param>
/// <param name="waitSeconds">Time between them, s.</param>
public sealed class Staged(LoadEquations first, double firstPart, LoadEquations motor, double waitSeconds) : LoadEquations
{
    // Any motor of the shop has settled by then.
    private const double SettlingSeconds = 5.0;

    private double _motorPart = 1.0;
    private double _firstSquare;
    private double _motorSquare;
    private double _product;
    private double _seconds;
    private double _restSeconds;
    private double _coastSeconds;
    private bool _motorRuns;

    /// <inheritdoc/>
    public override double BrushNoise => motor.BrushNoise;

    /// <inheritdoc/>
    public override bool IsOnItsWay => !_motorRuns || first.IsOnItsWay || motor.IsOnItsWay;

    /// <inheritdoc/>
    public override double SettledPart => Together(motor.SettledPart);

    /// <inheritdoc/>
    public override void Distort(double flattening)
    {
        first.Distort(flattening);
        motor.Distort(flattening);
    }

    /// <inheritdoc/>
    public override void Begin(double restSeconds, double coastSeconds, int step)
    {
        _seconds = 0.0;
        _motorRuns = false;
        _restSeconds = restSeconds;
        _coastSeconds = coastSeconds;
        first.Begin(restSeconds, coastSeconds, step);
    }

    /// <inheritdoc/>
    public override double Step(int step, double factor)
    {
        _seconds += StepSeconds;
        double current = firstPart * first.Step(step, factor);
        if (!_motorRuns && _seconds >= waitSeconds)
        {
            _motorRuns = true;
            motor.Begin(_restSeconds + waitSeconds, _coastSeconds, step);
        }

        return _motorRuns ? current + (_motorPart * motor.Step(step, factor)) : current;
    }

    /// <inheritdoc/>
    protected override void Solve(double hertz)
    {
        first.Prepare(hertz);
        motor.Prepare(hertz);
        first.Begin(double.PositiveInfinity, 1.0, 1);
        motor.Begin(double.PositiveInfinity, 1.0, 1);
        int last = (int)(SettlingSeconds * hertz);
        for (int cycle = 0; cycle <= last; cycle++)
        {
            _firstSquare = 0.0;
            _motorSquare = 0.0;
            _product = 0.0;
            for (int i = 1; i <= Steps; i++)
            {
                double one = firstPart * first.Step(i & (Steps - 1), 1.0);
                double other = motor.Step(i & (Steps - 1), 1.0);
                _firstSquare += one * one / Steps;
                _motorSquare += other * other / Steps;
                _product += one * other / Steps;
            }
        }

        _motorPart = MotorFor(1.0);
    }

    /// <inheritdoc/>
    protected override void SolveLoad() => motor.SetLoad(Math.Max(0.01, MotorFor(Load) / _motorPart));

    // Rms of both together with the motor at a load, by the shapes that they have at load 1.
    private double Together(double load)
    {
        double part = _motorPart * load;
        return Math.Sqrt(_firstSquare + (2.0 * part * _product) + (part * part * _motorSquare));
    }

    // The motor's part at which both together come to a current.
    private double MotorFor(double together)
    {
        double half = _product / _motorSquare;
        double rest = (_firstSquare - (together * together)) / _motorSquare;
        return Math.Max(0.01, Math.Sqrt(Math.Max(0.0, (half * half) - rest)) - half);
    }
}
