namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// A rectifier with a capacitor behind it: current flows only while the voltage stands above the capacitor's. Its capacitor is
/// empty at the start, and charged through a resistor that grows hot and lets go (NTC). What it feeds may begin later and slowly,
/// as an inverter's motor does.
/// </summary>
public sealed class Rectifier : LoadEquations
{
    private const int CyclesToRepeat = 12;
    private const double Peak = 1.4142135623730951;

    // Where in its pulse the voltage's peak lies, from a look at the equations; it only sets how large the capacitor is.
    private const double BeforePeak = 0.65;
    private const double MostDroop = 0.5;
    private const double Charged = 0.8;

    private double _ohms;
    private double _capacity;
    private double _fed;
    private double _coldOhms;
    private double _startOhms;
    private double _volts;
    private double _seconds;
    private double _fedSeconds;

    /// <summary>Gets the first peak with an empty capacitor over the running peak, 1 to 20.</summary>
    public double StartMultiple { get; init; } = 3.0;

    /// <summary>Gets the time constant in which the resistor of the start lets go, s.</summary>
    public double LetGoSeconds { get; init; } = 0.05;

    /// <summary>Gets the length of a pulse at load 1, ms.</summary>
    public double PulseMilliseconds { get; init; } = 1.5;

    /// <summary>Gets the time from switching on to what it feeds, s.</summary>
    public double WaitSeconds { get; init; }

    /// <summary>Gets the time in which what it feeds comes up, s.</summary>
    public double RampSeconds { get; init; }

    /// <inheritdoc/>
    public override bool IsOnItsWay => _fedSeconds < RampSeconds || _fedSeconds == 0.0;

    /// <inheritdoc/>
    public override void Begin(double restSeconds, double coastSeconds, int step)
    {
        _volts = Peak * RunDown(_volts / Peak, restSeconds, coastSeconds);
        _seconds = 0.0;
        _fedSeconds = 0.0;
        _startOhms = _coldOhms;
    }

    /// <inheritdoc/>
    public override double Step(int step, double factor)
    {
        _seconds += StepSeconds;
        _startOhms -= _startOhms * StepSeconds / (LetGoSeconds + StepSeconds);
        if (_seconds >= WaitSeconds && (_fedSeconds > 0.0 || _volts >= Charged * Peak * factor))
        {
            _fedSeconds += StepSeconds;
        }

        double fed = _fedSeconds >= RampSeconds && _fedSeconds > 0.0 ? _fed : _fed * _fedSeconds / Math.Max(1e-9, RampSeconds);
        return Next(step, factor, fed, _ohms + _startOhms);
    }

    /// <inheritdoc/>
    protected override void Solve(double hertz)
    {
        // With a direct current of 1 first; then all is brought to 1 A rms, which leaves the shape as it is.
        double pulse = Math.Clamp(PulseMilliseconds * 1e-3 * hertz, 0.02, 0.5);
        double droop = Peak * Math.Min(MostDroop, 1.0 - Math.Cos(2.0 * Math.PI * pulse * BeforePeak));
        _capacity = 0.5 / hertz / droop;
        double least = 1e-4;
        double most = 10.0;
        for (int i = 0; i < 18; i++)
        {
            _ohms = Math.Sqrt(least * most);
            bool isLong = Cycle(1.0).Pulse > pulse;
            least = isLong ? least : _ohms;
            most = isLong ? _ohms : most;
        }

        double rms = Cycle(1.0).Rms;
        _ohms *= rms;
        _capacity /= rms;
        _fed = 1.0 / rms;
        _coldOhms = Math.Max(0.0, (Peak / (StartMultiple * Cycle(_fed).Most)) - _ohms);
        _volts = 0.0;
    }

    /// <inheritdoc/>
    protected override void SolveLoad()
    {
        double volts = _volts;
        _fed = 1.0 / Falling.Search(less => Cycle(1.0 / less).Rms, Load, 0.02, 1e4);
        _volts = volts;
    }

    private double Next(int step, double factor, double fed, double ohms)
    {
        double volts = Math.Abs(Volts(step)) * factor;
        if (volts <= _volts)
        {
            _volts = Math.Max(0.0, _volts - (StepSeconds * fed / _capacity));
            return 0.0;
        }

        double part = StepSeconds / (ohms * _capacity);
        double next = Math.Max(0.0, (_volts + (part * (volts - (ohms * fed)))) / (1.0 + part));
        _volts = next;
        double current = Math.Max(0.0, volts - next) / ohms;
        return (step & (Steps - 1)) < HalfSteps ? current : -current;
    }

    private (double Rms, double Most, double Pulse) Cycle(double fed)
    {
        // A full capacitor comes down to its running charge faster than an empty one comes up.
        _volts = Peak;
        double squares = 0.0;
        double most = 0.0;
        double flows = 0.0;
        double current = 0.0;
        for (int i = 1; i <= CyclesToRepeat * Steps; i++)
        {
            double before = current;
            current = Math.Abs(Next(i & (Steps - 1), 1.0, fed, _ohms));
            if (i > (CyclesToRepeat - 1) * Steps)
            {
                // Between two steps the current goes in a straight line; in narrow pulses that counts.
                squares += ((current * current) + (current * before) + (before * before)) / 3.0;
                most = Math.Max(most, current);
                flows += current > 0.0 ? 0.5 : 0.0;
            }
        }

        return (Math.Sqrt(squares / Steps), most, flows / Steps);
    }
}
