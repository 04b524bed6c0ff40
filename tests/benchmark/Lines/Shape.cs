namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>One cycle of a current of 1 A rms, worked out once.</summary>
internal sealed class Shape
{
    private const int Points = 8192;

    private readonly double[] _cycle = new double[Points];

    private Shape(string name, Func<double, double> at)
    {
        Name = name;
        double[] values = [.. Enumerable.Range(0, Points).Select(i => at((double)i / Points))];
        double rms = Math.Sqrt(values.Sum(value => value * value) / Points);
        for (int i = 0; i < Points; i++)
        {
            _cycle[i] = values[i] / rms;
        }
    }

    /// <summary>Gets its name.</summary>
    public string Name { get; }

    /// <summary>A sine.</summary>
    public static Shape Sine() => new("sine", Wave);

    /// <summary>Positive half cycles only.</summary>
    public static Shape HalfWave() => new("half-wave", turn => Math.Max(0, Wave(turn)));

    /// <summary>A rectifier's pulses, each half a sine at a peak of the voltage.</summary>
    /// <param name="hertz">Mains frequency.</param>
    /// <param name="milliseconds">Length of a pulse.</param>
    public static Shape Pulses(double hertz, double milliseconds = 1.5) =>
        new($"{milliseconds:0.0} ms pulses", turn => Pulse(turn, 0.0005 * milliseconds * hertz));

    /// <summary>A triac that conducts for the last part of each half cycle.</summary>
    /// <param name="part">The part.</param>
    public static Shape Chopped(double part = 0.2) =>
        new($"{100 * part:0} % phase chop", turn => turn % 0.5 >= 0.5 * (1 - part) ? Wave(turn) : 0);

    /// <summary>The current at a point of the cycle.</summary>
    /// <param name="turns">Cycles since some rising zero crossing, 0 or more.</param>
    /// <returns>A at 1 A rms.</returns>
    public double At(double turns) => _cycle[(int)((turns - Math.Floor(turns)) * Points)];

    private static double Wave(double turn) => Math.Sin(2 * Math.PI * turn);

    private static double Pulse(double turn, double halfLength)
    {
        double fromPeak = Math.Abs((turn % 0.5) - 0.25);
        return fromPeak < halfLength ? Math.Sign(0.5 - turn) * Math.Cos(0.5 * Math.PI * fromPeak / halfLength) : 0;
    }
}
