namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// A universal motor (with brushes): v = R·i + L·di/dt + k·φ(i)·ω, torque k·φ(i)·i, J·dω/dt = torque − load torque
/// (textbooks). Iron saturates: φ(i) = i / (1 + (i/knee)⁴)^¼, and the field's part of L with it. In front of it may be a triac
/// that fires late, that comes up slowly (soft start), or a diode.
/// </summary>
public sealed class UniversalMotor : LoadEquations
{
    // Cycles after which a current at a fixed speed repeats itself: L/R is below one cycle.
    private const int CyclesToRepeat = 4;
    private const double Fastest = 1000.0;
    private const double FieldPart = 0.1;
    private const double StallTorque = 100.0;

    // A soft start begins where the rotor at rest draws this much of the rated current: common practice, no source.
    private const double SoftFrom = 0.4;

    // From standstill to this much above the running current counts as running up.
    private const double RunUpEnd = 1.1;
    private const double LongestRunUp = 60.0;

    private double _resistance;
    private double _stray;
    private double _field;
    private double _emf;
    private double _inertia = 1.0;
    private double _friction;
    private double _fan;
    private double _speed;
    private double _current;
    private double _turnsSinceOn;
    private double _hertz;
    private int _firesAt;
    private double _settledPart = 1.0;
    private bool _isSoft;

    /// <summary>Gets the current with the rotor held, as a multiple of rated, 1.2 to 15.</summary>
    public double StartMultiple { get; init; } = 4.0;

    /// <summary>Gets the time from standstill to within a tenth of the running current, at load 1, s.</summary>
    public double RunUpSeconds { get; init; } = 0.4;

    /// <summary>Gets the current at which the iron saturates, per unit; this one gives a recorded vacuum's harmonics.</summary>
    public double Knee { get; init; } = 0.7;

    /// <summary>Gets reactance over resistance with the rotor held.</summary>
    public double ReactancePart { get; init; } = 1.5;

    /// <summary>Gets the part of the load torque that is there at any speed; the rest is a fan's, ∝ speed².</summary>
    public double FrictionPart { get; init; } = 0.1;

    /// <summary>Gets the part of each half cycle in which a triac conducts, 0.1 to 1.</summary>
    public double Conduction { get; init; } = 1.0;

    /// <summary>Gets a value indicating whether a diode lets the positive half through alone.</summary>
    public bool HasDiode { get; init; }

    /// <summary>Gets the time in which a soft start raises the voltage to the whole, s; 0 for none.</summary>
    public double SoftSeconds { get; init; }

    /// <inheritdoc/>
    public override double BrushNoise { get; } = 0.02;

    /// <inheritdoc/>
    public override bool IsOnItsWay => _isSoft;

    /// <inheritdoc/>
    public override double SettledPart => _settledPart;

    /// <inheritdoc/>
    public override void Begin(double restSeconds, double coastSeconds, int step)
    {
        _speed = RunDown(_speed, restSeconds, coastSeconds);
        _current = 0.0;
        _turnsSinceOn = 0.0;
        _isSoft = SoftSeconds > 0.0;
    }

    /// <inheritdoc/>
    public override double Step(int step, double factor)
    {
        if (_isSoft)
        {
            SoftStart(step);
        }

        _current = Next(_current, Volts(step) * factor, _emf * _speed, step, out double torque);
        double load = _friction + (_fan * _speed * _speed);
        _speed = Math.Max(0.0, _speed + (StepSeconds * (torque - load) / _inertia));
        return _current;
    }

    /// <inheritdoc/>
    protected override void Solve(double hertz)
    {
        _hertz = hertz;
        _firesAt = Conduction >= 1.0 ? 0 : (int)Math.Round((1.0 - Conduction) * HalfSteps);
        double impedance = 1.0 / StartMultiple;
        for (int i = 0; i < 6; i++)
        {
            _resistance = impedance / Math.Sqrt(1.0 + (ReactancePart * ReactancePart));
            double inductance = ReactancePart * _resistance / (2.0 * Math.PI / Steps);
            _stray = (1.0 - FieldPart) * inductance;
            _field = FieldPart * inductance;
            impedance *= Cycle(0.0).Rms / StartMultiple;
        }

        _emf = Falling.Search(emf => Cycle(emf).Rms, 1.0, 0.0, Fastest);
        SolveLoad();
        for (int i = 0; i < 3; i++)
        {
            _inertia *= RunUpSeconds / RunUp();
        }
    }

    /// <inheritdoc/>
    protected override void SolveLoad()
    {
        (double rms, _) = Cycle(0.0);
        if (Load >= 0.98 * rms)
        {
            // More than it can turn: it stalls.
            _friction = StallTorque;
            _fan = 0.0;
            _settledPart = rms;
            return;
        }

        double emf = Load == 1.0 ? _emf : Falling.Search(at => Cycle(at).Rms, Load, 0.0, Fastest);
        double speed = emf / _emf;
        double torque = Cycle(emf).Torque * _emf;
        _friction = FrictionPart * torque;
        _fan = (1.0 - FrictionPart) * torque / (speed * speed);
        _settledPart = Load;
    }

    // The firing angle whose voltage has the wanted rms; the share of a sine's square from an angle on is known.
    private void SoftStart(int step)
    {
        _turnsSinceOn += 1.0 / Steps;
        double part = _turnsSinceOn / (_hertz * SoftSeconds);
        if (part >= 1.0)
        {
            _isSoft = false;
            _firesAt = Conduction >= 1.0 ? 0 : (int)Math.Round((1.0 - Conduction) * HalfSteps);
        }
        else if (step % HalfSteps == 0 || _turnsSinceOn <= 1.0 / Steps)
        {
            double from = Math.Min(0.9, SoftFrom / StartMultiple);
            double volts = from + ((1.0 - from) * part);
            _firesAt = Array.FindIndex(FiringTable.Volts, left => left <= volts);
        }
    }

    // The new current, with the new one's voltage over R, L and the emf (so the step may be longer than L/R).
    private double Next(double current, double volts, double emf, int step, out double torque)
    {
        bool waits = step % HalfSteps < _firesAt;
        if (current == 0.0 && (waits || (HasDiode && volts <= 0.0)))
        {
            torque = 0.0;
            return 0.0;
        }

        double part = current / Knee;
        part *= part;
        double iron = 1.0 + (part * part);
        double flux = 1.0 / Math.Sqrt(Math.Sqrt(iron));
        double inductance = _stray + (_field * flux / iron);
        double next = ((current * inductance) + volts) / (inductance + _resistance + (emf * flux));
        if (next * current < 0.0 && (waits || HasDiode))
        {
            next = 0.0;
        }

        torque = _emf * flux * next * next;
        return next;
    }

    private (double Rms, double Torque) Cycle(double emf)
    {
        double current = 0.0;
        double squares = 0.0;
        double torques = 0.0;
        for (int i = 1; i <= CyclesToRepeat * Steps; i++)
        {
            int step = i & (Steps - 1);
            current = Next(current, Volts(step), emf, step, out double torque);
            if (i > (CyclesToRepeat - 1) * Steps)
            {
                squares += current * current;
                torques += torque;
            }
        }

        return (Math.Sqrt(squares / Steps), torques / Steps / Math.Max(1e-9, _emf));
    }

    private double RunUp()
    {
        _speed = 0.0;
        _current = 0.0;
        double before = StartMultiple;
        for (double seconds = 0.0; seconds < LongestRunUp;)
        {
            double squares = 0.0;
            for (int i = 1; i <= Steps; i++)
            {
                double current = Step(i & (Steps - 1), 1.0);
                squares += current * current;
            }

            double rms = Math.Sqrt(squares / Steps);
            seconds += Steps * StepSeconds;
            if (rms <= RunUpEnd)
            {
                // The cycle's rms is that of its middle; between two cycles it falls in a straight line.
                double over = (RunUpEnd - rms) / Math.Max(1e-9, before - rms);
                return Math.Max(0.2 / _hertz, seconds - ((0.5 + Math.Min(1.0, over)) / _hertz));
            }

            before = rms;
        }

        return LongestRunUp;
    }
}
