namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The equations of a load, stepped through the mains cycle. Everything is per unit: voltage and current of 1 are nominal
/// voltage and the rated current, both rms; a speed of 1 is that at load 1 (an induction motor: synchronous speed).
/// </summary>
public abstract class LoadEquations
{
    /// <summary>Steps of a mains cycle: 156 µs at 50 Hz, 130 µs at 60 Hz.</summary>
    public const int Steps = 128;

    /// <summary>Steps of half a cycle.</summary>
    protected const int HalfSteps = Steps / 2;

    private double[] _volts = CycleTables.Volts;
    private bool _isPrepared;

    /// <summary>Gets the part of the current that crackles with the brushes, 0 where there are none.</summary>
    public virtual double BrushNoise => 0.0;

    /// <summary>Gets a value indicating whether a course of its own (a ramp, a wait) is under way.</summary>
    public virtual bool IsOnItsWay => false;

    /// <summary>Gets the current that the load settles at, at nominal voltage, as a part of rated.</summary>
    public virtual double SettledPart => Load;

    /// <summary>Gets the load: the running current that is asked for, as a part of rated, 0.01 to 10.</summary>
    protected double Load { get; private set; } = 1.0;

    /// <summary>Gets the time of a step, s.</summary>
    protected double StepSeconds { get; private set; }

    /// <summary>Puts the load on a mains with harmonics, before anything else is asked of it.</summary>
    /// <param name="flattening">As <see cref="Mains.Flattening"/>.</param>
    public virtual void Distort(double flattening) => _volts = CycleTables.Of(flattening);

    /// <summary>Works out the parameters; the first call alone does something.</summary>
    /// <param name="hertz">Mains frequency, Hz.</param>
    public void Prepare(double hertz)
    {
        if (!_isPrepared)
        {
            _isPrepared = true;
            StepSeconds = 1.0 / (hertz * Steps);
            Solve(hertz);
            SolveLoad();
        }
    }

    /// <summary>Moves the load.</summary>
    /// <param name="load">Running current that is asked for, as a part of rated, above 0.</param>
    public void SetLoad(double load)
    {
        Load = load;
        if (_isPrepared)
        {
            SolveLoad();
        }
    }

    /// <summary>Switches on. The state of before is still there, run down for the time of rest.</summary>
    /// <param name="restSeconds">Time since it was switched off; infinite for the first start.</param>
    /// <param name="coastSeconds">Time from full speed to rest (a filament: to cool; a capacitor: to empty).</param>
    /// <param name="step">The step of the cycle at which it is switched on.</param>
    public abstract void Begin(double restSeconds, double coastSeconds, int step);

    /// <summary>Goes on by a step.</summary>
    /// <param name="step">The step of the cycle that is reached.</param>
    /// <param name="factor">Height of the voltage, 1 is nominal.</param>
    /// <returns>Current at that step, per unit.</returns>
    public abstract double Step(int step, double factor);

    /// <summary>Voltage at a step.</summary>
    /// <param name="step">The step, 0 at the rising zero crossing.</param>
    /// <returns>Per unit of the rms, so about from -1.41 to 1.41.</returns>
    protected double Volts(int step) => _volts[step & (Steps - 1)];

    /// <summary>Works out the parameters that do not depend on the load.</summary>
    /// <param name="hertz">Mains frequency, Hz.</param>
    protected abstract void Solve(double hertz);

    /// <summary>Works out what depends on <see cref="Load"/>.</summary>
    protected abstract void SolveLoad();

    /// <summary>What is left of a speed, a heat or a charge that runs down in a straight line.</summary>
    /// <param name="then">What it was, 1 for full.</param>
    /// <param name="restSeconds">How long ago.</param>
    /// <param name="coastSeconds">Time from 1 to 0.</param>
    /// <returns>What is left, 0 or more.</returns>
    protected static double RunDown(double then, double restSeconds, double coastSeconds) =>
        restSeconds >= then * coastSeconds ? 0.0 : then - (restSeconds / coastSeconds);
}
