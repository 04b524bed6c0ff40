using System.Numerics;
using MathNet.Numerics;
using MathNet.Numerics.IntegralTransforms;
using MathNet.Numerics.LinearAlgebra;

namespace NanoDustSwitch.Inspector.Spectrum;

/// <summary>Mains frequency, harmonics and spectrum of a second of current, by a numerics library's fits and transform.</summary>
internal sealed class MainsSpectrum
{
    private const double LeastHertz = 40;
    private const double GreatestHertz = 70;
    private const int MostHarmonics = 25;

    // A fit of sine and cosine to white noise takes more than so many times its share of the power less than once in a
    // million tries.
    private const double LeastShare = 40;

    // Of what lies so near to half the rate, the readings, or the means of 2.5 ms, show hardly anything that can be believed.
    private const double UsableShare = 0.92;

    // Readings of the same current are about as strong as the means of it; those of a surge or of the quiet line are not.
    private const double Alike = 2;
    private const int LeastReadings = 30;
    private const double WorstCondition = 4;

    private readonly Wave _wave;
    private readonly Wave _shape;
    private readonly double[] _fit = [];

    private MainsSpectrum(Wave wave, Wave? shape)
    {
        _wave = wave;
        _shape = shape ?? wave;
        Seconds = wave.Seconds.Length > 1
            ? (wave.Seconds[^1] - wave.Seconds[0]) * wave.Seconds.Length / (wave.Seconds.Length - 1)
            : 0;
        Rate = Seconds > 0 ? wave.Seconds.Length / Seconds : 0;
        if (Seconds < 1.5 / LeastHertz)
        {
            return;
        }

        Hertz = FindHertz();
        double kept = Power(Hertz, out double share);
        IsFound = kept > 0 && share > LeastShare;
        if (IsFound)
        {
            int most = Math.Clamp((int)(UsableShare * Rate / 2 / Hertz), 1, MostHarmonics);
            if (shape is not null)
            {
                // In two cycles the holes between readings may hide what a harmonic does: then the fit hangs on the noise.
                most = Enumerable.Range(1, MostHarmonics).TakeWhile(harmonics => Condition(harmonics) < WorstCondition)
                    .DefaultIfEmpty(1).Last();
            }

            _fit = Fit.LinearCombination(_shape.Seconds, _shape.Amperes, Waves(most));
            Amperes = [.. Enumerable.Range(1, most).Select(number => Size(number) / Kept(_shape, number * Hertz) / Math.Sqrt(2))];
        }
    }

    /// <summary>Gets the length of what was looked at, in seconds.</summary>
    public double Seconds { get; }

    /// <summary>Gets its points a second.</summary>
    public double Rate { get; }

    /// <summary>Gets the first time that was looked at.</summary>
    public double From => _wave.Seconds.Length > 0 ? _wave.Seconds[0] : 0;

    /// <summary>Gets a value indicating whether there is a current of the mains' frequency in it.</summary>
    public bool IsFound { get; }

    /// <summary>
    /// Gets a value indicating whether it is of means of 2.5 ms and not of readings: only the lowest harmonics are in them.
    /// </summary>
    public bool IsOfBuckets => _shape.Slice > 0;

    /// <summary>Gets the cycles that the harmonics and the shape are from.</summary>
    public double Cycles => (_shape.Seconds[^1] - _shape.Seconds[0]) * Hertz;

    /// <summary>Gets the frequency of the mains.</summary>
    public double Hertz { get; }

    /// <summary>Gets the rms of the fundamental and of each harmonic, A; the fundamental first.</summary>
    public double[] Amperes { get; } = [];

    /// <summary>Gets what all harmonics are together, as a part of the fundamental.</summary>
    public double Distortion => Math.Sqrt(Amperes.Skip(1).Sum(ampere => ampere * ampere)) / Amperes[0];

    /// <summary>Looks at the steadiest strong second of a current.</summary>
    /// <param name="wave">The current.</param>
    /// <param name="shapes">Readings as they came where the current is of means: the nearest that are as strong give shape and
    /// harmonics.</param>
    /// <returns>What is in it.</returns>
    public static MainsSpectrum Of(Wave wave, IReadOnlyList<Wave>? shapes = null)
    {
        Wave second = SteadyPart.Of(wave);
        if (second.Seconds.Length == 0)
        {
            return new MainsSpectrum(second, null);
        }

        double middle = second.Seconds[second.Seconds.Length / 2];
        double rms = Rms(second);
        return new MainsSpectrum(
            second,
            shapes?.Where(shape => shape.Seconds.Length >= LeastReadings && Rms(shape) < Alike * rms && Rms(shape) > rms / Alike)
                .MinBy(shape => Math.Abs(shape.Seconds[0] - middle)));
    }

    /// <summary>Gives the readings laid over each other as one cycle.</summary>
    /// <returns>Time in the cycle, s, and current about its mean, A.</returns>
    public (double Seconds, double Amperes)[] Folded()
    {
        double cycle = 1 / Hertz;
        double begin = Begin(cycle);
        return
        [
            .. _shape.Seconds.Zip(_shape.Amperes).Select(point => (
                Math.IEEERemainder(point.First - begin, cycle) is var at && at < 0 ? at + cycle : at,
                point.Second - _fit[0])),
        ];
    }

    /// <summary>Gives the sum of fundamental and harmonics over one cycle.</summary>
    /// <param name="points">How many points.</param>
    /// <returns>Time in the cycle, s, and current, A.</returns>
    public (double Seconds, double Amperes)[] Cycle(int points)
    {
        double cycle = 1 / Hertz;
        double begin = Begin(cycle);
        Func<double, double>[] waves = Waves(Amperes.Length);
        return
        [
            .. Enumerable.Range(0, points + 1).Select(i => i * cycle / points)
                .Select(at => (at, waves.Zip(_fit).Skip(1).Sum(part => part.First(begin + at) * part.Second))),
        ];
    }

    /// <summary>Gives the spectrum, by a fast Fourier transform of the readings under a Hann window.</summary>
    /// <returns>Frequency, Hz, and rms current, A.</returns>
    public (double Hertz, double Amperes)[] Lines()
    {
        double mean = _wave.Amperes.Average();
        double[] window = Window.HannPeriodic(_wave.Amperes.Length);
        Complex[] values = [.. _wave.Amperes.Zip(window).Select(point => new Complex((point.First - mean) * point.Second, 0))];
        Fourier.Forward(values, FourierOptions.Matlab);
        double one = Math.Sqrt(2) / window.Sum();
        return
        [
            .. Enumerable.Range(1, values.Length / 2).Select(
                i => (i / Seconds, values[i].Magnitude * one / Kept(_wave, i / Seconds))),
        ];
    }

    // From where the fundamental crosses nought upwards.
    private double Begin(double cycle) => -Math.Atan2(_fit[2], _fit[1]) / (2 * Math.PI) * cycle;

    private double FindHertz()
    {
        // Over a second the peak is two hertz wide; steps of a quarter of its width cannot miss it.
        double step = Math.Min(0.5, 0.5 / Seconds);
        int steps = (int)((GreatestHertz - LeastHertz) / step);
        double peak = Enumerable.Range(0, steps + 1).Select(i => LeastHertz + (i * step)).MaxBy(hertz => Power(hertz, out _));
        return FindMinimum.OfScalarFunctionConstrained(hertz => -Power(hertz, out _), peak - step, peak + step, 1e-5, 200);
    }

    // Power of the best sine of a frequency, and how many times its share of the rest that is.
    private double Power(double hertz, out double share)
    {
        double w = 2 * Math.PI * hertz;
        double[] fit = Fit.LinearCombination(_wave.Seconds, _wave.Amperes, _ => 1, t => Math.Sin(w * t), t => Math.Cos(w * t));
        double power = ((fit[1] * fit[1]) + (fit[2] * fit[2])) / 2;
        double all = _wave.Amperes.Average(value => (value - fit[0]) * (value - fit[0]));
        share = power / Math.Max(all - power, 1e-18) * _wave.Amperes.Length / 2;
        return power;
    }

    // By how much noise may grow in the fit of so many harmonics to the shape.
    private double Condition(int harmonics)
    {
        Func<double, double>[] waves = Waves(harmonics);
        return waves.Length < _shape.Seconds.Length
            ? Matrix<double>.Build.Dense(_shape.Seconds.Length, waves.Length, (row, column) => waves[column](_shape.Seconds[row]))
                .ConditionNumber()
            : double.PositiveInfinity;
    }

    private Func<double, double>[] Waves(int harmonics)
    {
        double w = 2 * Math.PI * Hertz;
        return
        [
            _ => 1,
            .. Enumerable.Range(1, harmonics).SelectMany(
                number => new Func<double, double>[] { t => Math.Sin(number * w * t), t => Math.Cos(number * w * t) }),
        ];
    }

    private double Size(int number) =>
        Math.Sqrt((_fit[(2 * number) - 1] * _fit[(2 * number) - 1]) + (_fit[2 * number] * _fit[2 * number]));

    private static double Rms(Wave wave) => MathNet.Numerics.Statistics.Statistics.PopulationStandardDeviation(wave.Amperes);

    // What a mean over a slice of time leaves of a sine.
    private static double Kept(Wave wave, double hertz) => wave.Slice > 0 ? Trig.Sinc(hertz * wave.Slice) : 1;
}
