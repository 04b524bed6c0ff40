namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// A filament: its resistance goes with the 1.2th power of its temperature (tungsten, handbooks, from memory), and it gives its
/// heat away by the fourth. With a start multiple of 1 it is a heater, whose resistance stays.
/// </summary>
public sealed class Lamp : LoadEquations
{
    private const double Power = 1.2;
    private const double EndOfStart = 1.1;
    private const double LongestStart = 20.0;

    private double _coldest;
    private double _heat;
    private double _heatSeconds = 0.05;

    /// <summary>Gets the hot resistance over the cold, 1 to 15.</summary>
    public double StartMultiple { get; init; } = 10.0;

    /// <summary>Gets the time to within a tenth of the running current, s.</summary>
    public double RunUpSeconds { get; init; } = 0.1;

    /// <inheritdoc/>
    public override void Begin(double restSeconds, double coastSeconds, int step) =>
        _heat = _coldest + ((1.0 - _coldest) * RunDown((_heat - _coldest) / Math.Max(0.01, 1.0 - _coldest), restSeconds, coastSeconds));

    /// <inheritdoc/>
    public override double Step(int step, double factor)
    {
        double volts = Volts(step) * factor;
        if (StartMultiple <= 1.0)
        {
            return Load * volts;
        }

        double current = volts / Math.Pow(_heat, Power);
        double square = _heat * _heat;
        double cold = _coldest * _coldest * _coldest * _coldest;
        double away = ((square * square) - cold) / (1.0 - cold);
        _heat = Math.Max(_coldest, _heat + (StepSeconds * ((volts * current) - away) / _heatSeconds));
        return Load * current;
    }

    /// <inheritdoc/>
    protected override void Solve(double hertz)
    {
        _coldest = Math.Pow(Math.Max(1.0, StartMultiple), -1.0 / Power);
        if (StartMultiple > 1.0)
        {
            for (int i = 0; i < 3; i++)
            {
                _heatSeconds *= RunUpSeconds / Start();
            }
        }

        _heat = _coldest;
    }

    /// <inheritdoc/>
    protected override void SolveLoad()
    {
        // So many more or fewer of them.
    }

    private double Start()
    {
        _heat = _coldest;
        for (int i = 1; i * StepSeconds < LongestStart; i++)
        {
            Step(i & (Steps - 1), 1.0);
            if (Math.Pow(_heat, -Power) <= EndOfStart)
            {
                return i * StepSeconds;
            }
        }

        return LongestStart;
    }
}
