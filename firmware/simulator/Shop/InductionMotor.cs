namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// A single-phase induction motor by its equivalent circuit with slip (two revolving fields; textbooks): a main winding, and a
/// start winding that a switch takes out at most of the speed. Currents and torques stand in tables by speed; time moves the
/// speed and lets the direct-current offset of switching on die away.
/// </summary>
public sealed class InductionMotor : LoadEquations
{
    private const int Points = 128;
    private const double RunUpEnd = 1.1;
    private const double LeastTorque = 0.02;
    private const double StallTorque = 100.0;
    private const double StillGains = 0.02;

    // The centrifugal switch closes again below this part of the speed at which it opens: common practice, no source.
    private const double ClosesAgain = 0.8;

    private readonly InductionPoint[] _main = new InductionPoint[Points + 1];
    private readonly InductionPoint[] _both = new InductionPoint[Points + 1];
    private readonly double[] _harmonics = new double[Steps];
    private InductionPoint[] _table;
    private double _inertia = 1.0;
    private double _friction;
    private double _fan;
    private double _speed;
    private double _gain;
    private double _offset;
    private double _offsetLeft;
    private double _settledPart = 1.0;

    /// <summary>Initializes a new instance of the <see cref="InductionMotor"/> class.</summary>
    public InductionMotor() => _table = _both;

    /// <summary>Gets the current with the rotor held, as a multiple of rated, 2.5 to 12.</summary>
    public double StartMultiple { get; init; } = 6.0;

    /// <summary>Gets the time from standstill to within a tenth of the running current, at load 1, s.</summary>
    public double RunUpSeconds { get; init; } = 0.5;

    /// <summary>Gets the running current without any load, as a part of rated, 0.2 to 0.8.</summary>
    public double IdlePart { get; init; } = 0.35;

    /// <summary>Gets the speed at which the start winding goes off, as a part of synchronous (textbooks: 0.7 to 0.8).</summary>
    public double CutOut { get; init; } = 0.75;

    /// <summary>Gets a value indicating whether a capacitor is in series with the start winding, or resistance only.</summary>
    public bool HasCapacitor { get; init; }

    /// <summary>Gets the time constant of the direct-current offset, s; 0.01 to 0.05 (textbooks, from memory).</summary>
    public double OffsetSeconds { get; init; } = 0.02;

    /// <summary>Gets the part of the load torque that is there at any speed (pressure, belt); the rest is ∝ speed².</summary>
    public double FrictionPart { get; init; } = 0.3;

    /// <inheritdoc/>
    public override double SettledPart => _settledPart;

    /// <summary>Gets a value indicating whether it still gains speed: on its plateau the current alone looks settled.</summary>
    public override bool IsOnItsWay => _speed > 0.0 && Math.Abs(_gain) > StillGains;

    /// <summary>Gets a value indicating whether the start winding is in.</summary>
    public bool IsStartWindingIn => ReferenceEquals(_table, _both);

    /// <summary>Gets the speed, 1 is synchronous.</summary>
    public double Speed => _speed;

    /// <inheritdoc/>
    public override void Begin(double restSeconds, double coastSeconds, int step)
    {
        _speed = RunDown(_speed, restSeconds, coastSeconds);
        _table = _speed < CutOut * ClosesAgain ? _both : _main;

        // The current can only begin at nothing: the offset takes up what the alternating part would be.
        InductionPoint now = At(_table, _speed);
        int before = (step - 1) & (Steps - 1);
        _offset = -Alternating(now, before);
    }

    /// <inheritdoc/>
    public override double Step(int step, double factor)
    {
        InductionPoint now = At(_table, _speed);
        double load = _friction + (_fan * _speed * _speed);
        _gain = ((now.Torque * factor * factor) - load) / _inertia;
        _speed += StepSeconds * _gain;
        _speed = Math.Clamp(_speed, 0.0, 0.99999);
        _offset *= _offsetLeft;
        if (_speed >= CutOut)
        {
            _table = _main;
        }
        else if (_speed < CutOut * ClosesAgain)
        {
            _table = _both;
        }

        return factor * (Alternating(now, step & (Steps - 1)) + _offset);
    }

    /// <inheritdoc/>
    protected override void Solve(double hertz)
    {
        InductionCircuit circuit = InductionCircuit.Fit(StartMultiple, IdlePart, HasCapacitor);
        for (int i = 0; i <= Points; i++)
        {
            double speed = SpeedAt(i);
            _main[i] = circuit.At(speed, false);
            _both[i] = circuit.At(speed, true);
        }

        SolveHarmonics();
        _offsetLeft = Math.Exp(-StepSeconds / Math.Max(1e-4, OffsetSeconds));
        SolveLoad();
        _inertia = RunUpSeconds / RunUpOfInertiaOne();
    }

    /// <inheritdoc/>
    protected override void SolveLoad()
    {
        // From full speed down: the current rises, up to where the torque is greatest.
        int best = Enumerable.Range(0, Points + 1).MaxBy(i => _main[i].Torque);
        int idle = Points;
        while (idle > best && _main[idle].Torque < 0.0)
        {
            idle--;
        }

        double least = SpeedAt(best);
        double most = SpeedAt(Math.Min(Points, idle + 1));
        if (Load >= At(_main, least).Amperes)
        {
            _friction = StallTorque;
            _fan = 0.0;
            _settledPart = _both[0].Amperes;
            return;
        }

        // Without any torque it turns just below synchronous speed; less than its current there it cannot draw.
        double idling = Falling.Search(at => 1.0 + At(_main, at).Torque, 1.0, least, most);
        double speed = Load <= At(_main, idling).Amperes
            ? idling
            : Falling.Search(at => At(_main, at).Amperes, Load, least, idling);
        InductionPoint there = At(_main, speed);
        double torque = Math.Max(0.0, there.Torque);
        _friction = FrictionPart * torque;
        _fan = (1.0 - FrictionPart) * torque / (speed * speed);
        _settledPart = there.Amperes;
    }

    private double Alternating(in InductionPoint now, int step) =>
        (now.InPhase * CycleTables.Volts[step]) + (now.Across * CycleTables.Ahead[step]) + _harmonics[step];

    // The fields of harmonics turn far away from the rotor's speed, so at any speed they see little more than the reactance of
    // the rotor held (textbooks): their current is the integral of their voltage.
    private void SolveHarmonics()
    {
        double current = 0.0;
        double mean = 0.0;
        for (int i = 0; i < Steps; i++)
        {
            current += (Volts(i) - CycleTables.Volts[i]) * StartMultiple * (2.0 * Math.PI / Steps);
            _harmonics[i] = current;
            mean += current / Steps;
        }

        for (int i = 0; i < Steps; i++)
        {
            _harmonics[i] -= mean;
        }
    }

    // Dense towards synchronous speed, where a little slip changes everything.
    private static double SpeedAt(int point)
    {
        double left = 1.0 - ((double)point / Points);
        return 1.0 - (left * left);
    }

    private static InductionPoint At(InductionPoint[] table, double speed)
    {
        double at = Points * (1.0 - Math.Sqrt(1.0 - speed));
        int point = Math.Min(Points - 1, (int)at);
        return table[point].Towards(table[point + 1], at - point);
    }

    private double RunUpOfInertiaOne()
    {
        double seconds = 0.0;
        for (int i = 0; i < Points; i++)
        {
            double speed = 0.5 * (SpeedAt(i) + SpeedAt(i + 1));
            InductionPoint here = At(speed < CutOut ? _both : _main, speed);
            if (speed >= CutOut && here.Amperes <= RunUpEnd)
            {
                break;
            }

            double torque = here.Torque - _friction - (_fan * speed * speed);
            seconds += (SpeedAt(i + 1) - SpeedAt(i)) / Math.Max(LeastTorque, torque);
        }

        return seconds;
    }
}
