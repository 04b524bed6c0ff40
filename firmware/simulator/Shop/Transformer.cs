namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// A transformer or toroid with a load behind it: dλ/dt = v − R·i. Above its knee the iron is full and the winding is little
/// more than air, so that the phase of switching on, and what flux was left, decide how high and on which side the first peaks
/// stand.
/// </summary>
public sealed class Transformer : LoadEquations
{
    private const double Peak = 1.4142135623730951;
    private const double Radians = 2.0 * Math.PI / Steps;
    private const double EndOfStart = 1.1;
    private const double LongestStart = 3.0;
    private const int CyclesToRepeat = 3;

    private double _flux;
    private double _ohms = 0.03;
    private double _air = 0.1;
    private double _conductance = 1.0;
    private double _leftFlux;
    private bool _wasOn;

    /// <summary>Gets the highest first peak over the running peak, 2 to 30.</summary>
    public double StartMultiple { get; init; } = 8.0;

    /// <summary>Gets the time from there to within a tenth of the running current, s.</summary>
    public double RunUpSeconds { get; init; } = 0.2;

    /// <summary>Gets the flux at which the iron is full over the flux that nominal voltage asks for.</summary>
    public double Knee { get; init; } = 1.2;

    /// <summary>Gets the current without load, a part of rated.</summary>
    public double IdlePart { get; init; } = 0.05;

    /// <summary>Gets the flux that stays in the iron after switching off, as a part of what was there.</summary>
    public double Remanence { get; init; } = 0.6;

    /// <inheritdoc/>
    public override double SettledPart => Math.Max(Load, IdlePart);

    /// <inheritdoc/>
    public override void Begin(double restSeconds, double coastSeconds, int step)
    {
        _flux = Remanence * Math.Clamp(_wasOn ? _flux : _leftFlux, -Peak, Peak);
        _wasOn = true;
    }

    /// <inheritdoc/>
    public override double Step(int step, double factor)
    {
        double volts = Volts(step) * factor;
        double knee = Knee * Peak;
        double full = Math.Abs(_flux) - knee;
        double iron = (_flux / Peak * IdlePart * Peak) + (full > 0.0 ? Math.CopySign(full / _air, _flux) : 0.0);

        // The winding's resistance takes its part of the voltage; in the air region implicitly, for R/L is fast there.
        double current = iron + (volts * _conductance);
        double stiff = full > 0.0 ? 1.0 + (Radians * _ohms / _air) : 1.0;
        _flux += Radians * (volts - (_ohms * current)) / stiff;
        return current;
    }

    /// <inheritdoc/>
    protected override void Solve(double hertz)
    {
        SolveLoad();
        for (int i = 0; i < 12; i++)
        {
            (double peak, double seconds) = Start();
            _air *= Math.Pow(peak / (Peak * StartMultiple), 0.8);
            _ohms = Math.Clamp(_ohms * Math.Pow(seconds / RunUpSeconds, 0.7), 1e-4, 0.3);
        }

        _flux = 0.0;
        _wasOn = false;
        _leftFlux = Peak;
    }

    /// <inheritdoc/>
    protected override void SolveLoad()
    {
        double square = (Load * Load) - (IdlePart * IdlePart);
        _conductance = square > 0.0 ? Math.Sqrt(square) : 0.0;
    }

    // The worst start: at the zero crossing, with all the flux left that can be left, on the side it grows to.
    private (double Peak, double Seconds) Start()
    {
        _flux = Remanence * Peak;
        double most = 0.0;
        double seconds = 0.0;
        double settled = 0.0;
        while (seconds < LongestStart)
        {
            double squares = 0.0;
            double high = 0.0;
            for (int i = 1; i <= Steps; i++)
            {
                double current = Step(i & (Steps - 1), 1.0);
                squares += current * current;
                high = Math.Max(high, Math.Abs(current));
            }

            most = Math.Max(most, high);
            seconds += Steps * StepSeconds;
            settled = Math.Sqrt(squares / Steps);
            if (settled <= EndOfStart && seconds > CyclesToRepeat * Steps * StepSeconds)
            {
                break;
            }
        }

        return (most, seconds);
    }
}
