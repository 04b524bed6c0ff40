using MathNet.Numerics;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>A load of the shop on a mains of its own, and what a meter sees of it; rated 10 A.</summary>
internal sealed class LoadBench
{
    /// <summary>Rated current of every load here, A.</summary>
    public const double Amperes = 10;

    private const int Step = 50;

    private readonly Mains _mains;
    private readonly double _hertz;
    private long _now = 1_000_000;

    /// <summary>Initializes a new instance of the <see cref="LoadBench"/> class: switches the load on.</summary>
    /// <param name="equations">The load.</param>
    /// <param name="hertz">Mains frequency, Hz.</param>
    /// <param name="degrees">Angle of the mains at the switching on.</param>
    public LoadBench(LoadEquations equations, double hertz = 60, double degrees = 0)
    {
        _hertz = hertz;
        _mains = new Mains(hertz, 120, degrees - (360 * hertz * (1_000_000 * 1e-6)));
        Model = new LoadModel(equations, Amperes, hertz, 1);
        Model.Switch(true, _now);
    }

    /// <summary>Gets the load.</summary>
    public LoadModel Model { get; }

    /// <summary>Gets or sets the voltage as a part of nominal.</summary>
    public double Volts { get; set; } = 1;

    /// <summary>Gets the greatest current since the last <see cref="Run"/> began, over the rated peak.</summary>
    public double Peak { get; private set; }

    /// <summary>Lets time pass.</summary>
    /// <param name="seconds">How long.</param>
    /// <returns>True rms of that time over the rated current.</returns>
    public double Run(double seconds)
    {
        long end = _now + (long)(seconds * 1e6);
        double squares = 0;
        int count = 0;
        Peak = 0;
        for (; _now < end; _now += Step)
        {
            double amperes = Model.Current(_now, _mains.At(_now) with { Factor = Volts });
            Peak = Math.Max(Peak, Math.Abs(amperes) / (Amperes * Math.Sqrt(2)));
            squares += amperes * amperes;
            count++;
        }

        return Math.Sqrt(squares / count) / Amperes;
    }

    /// <summary>Lets a number of mains cycles pass.</summary>
    /// <param name="cycles">How many.</param>
    /// <returns>True rms over the rated current.</returns>
    public double Cycles(int cycles) => Run(cycles / _hertz);

    /// <summary>Lets time pass until one-cycle rms stays at most this much over the settled current.</summary>
    /// <param name="above">How much, 1.1 for a tenth.</param>
    /// <param name="longest">How long at most, s.</param>
    /// <returns>The time, s, to half a cycle.</returns>
    public double UntilWithin(double above, double longest)
    {
        double settled = Model.SettledAmperes / Amperes;
        double last = 0;
        for (int i = 1; i < longest * _hertz; i++)
        {
            if (Cycles(1) > above * settled)
            {
                last = i / _hertz;
            }
        }

        return last;
    }

    /// <summary>Takes the harmonics of the next cycle by a least squares fit.</summary>
    /// <param name="most">The highest.</param>
    /// <returns>Rms of the first to the highest, A.</returns>
    public double[] Harmonics(int most)
    {
        int readings = (int)(1e6 / _hertz / Step);
        double[] angles = new double[readings];
        double[] amperes = new double[readings];
        for (int i = 0; i < readings; i++, _now += Step)
        {
            angles[i] = 2 * Math.PI * _mains.At(_now).Turn;
            amperes[i] = Model.Current(_now, _mains.At(_now));
        }

        return [.. Enumerable.Range(1, most).Select(Harmonic)];

        double Harmonic(int number)
        {
            double[] fit = Fit.LinearCombination(
                angles, amperes, _ => 1, x => Math.Sin(number * x), x => Math.Cos(number * x));
            return Math.Sqrt(0.5 * ((fit[1] * fit[1]) + (fit[2] * fit[2])));
        }
    }
}
