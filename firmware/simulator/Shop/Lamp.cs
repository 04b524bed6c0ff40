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
    private double _whole = 1.0;
    private int _firesAt;
    private double _heatSeconds = 0.05;

    /// <summary>Gets the hot resistance over the cold, 1 to 15.</summary>
    public double StartMultiple { get; init; } = 10.0;

    /// <summary>Gets the time to within a tenth of the running current, s.</summary>
    public double RunUpSeconds { get; init; } = 0.1;

    /// <summary>Gets the part of each half cycle in which a triac conducts, 0.1 to 1.</summary>
    public double Conduction { get; init; } = 1.0;

    /// <summary>Gets a value indicating whether a diode lets the positive half through alone.</summary>
    public bool HasDiode { get; init; }

    /// <inheritdoc/>
    public override void Begin(double restSeconds, double coastSeconds, int step) =>
        _heat = _coldest + RunDown(_heat - _coldest, restSeconds, coastSeconds / Math.Max(0.01, 1.0 - _coldest));

    /// <inheritdoc/>
    public override double Step(int step, double factor)
    {
        double volts = step % HalfSteps >= _firesAt && (!HasDiode || step < HalfSteps) ? _whole * Volts(step) * factor : 0.0;
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
        // What is cut out of the cycle, the rest makes up for: the rated current is that of both.
        _firesAt = Conduction >= 1.0 ? 0 : (int)Math.Round((1.0 - Conduction) * HalfSteps);
        _whole = (HasDiode ? Math.Sqrt(2.0) : 1.0) / FiringTable.Volts[_firesAt];
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
