using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>One cycle of a current of 1 A rms, worked out once.</summary>
internal sealed class Shape
{
    private const int Points = 8192;

    private readonly double[] _cycle = new double[Points];

    private Shape(string name, Waveform waveform)
    {
        Name = name;
        for (int i = 0; i < Points; i++)
        {
            double turn = (double)i / Points;
            (double sine, double cosine) = Math.SinCos(2 * Math.PI * turn);
            _cycle[i] = waveform.At(new MainsPoint(turn, sine, cosine, 1));
        }
    }

    /// <summary>Gets its name.</summary>
    public string Name { get; }

    /// <summary>A sine.</summary>
    /// <param name="hertz">Mains frequency.</param>
    public static Shape Sine(double hertz) => new("sine", new Waveform(ToolKind.Lamp, hertz, 1, 1));

    /// <summary>Positive half cycles only.</summary>
    /// <param name="hertz">Mains frequency.</param>
    public static Shape HalfWave(double hertz) => new("half-wave", new Waveform(ToolKind.HalfWave, hertz, 1, 1));

    /// <summary>A rectifier's pulses of 1.5 ms.</summary>
    /// <param name="hertz">Mains frequency.</param>
    public static Shape Pulses(double hertz) => new("1.5 ms pulses", new Waveform(ToolKind.Rectified, hertz, 1, 1.5));

    /// <summary>A triac that conducts for the last fifth of each half cycle.</summary>
    /// <param name="hertz">Mains frequency.</param>
    public static Shape Chopped(double hertz) => new("20 % phase chop", new Waveform(ToolKind.PhaseChopped, hertz, 0.2, 1));

    /// <summary>The current at a point of the cycle.</summary>
    /// <param name="turns">Cycles since some rising zero crossing, 0 or more.</param>
    /// <returns>A at 1 A rms.</returns>
    public double At(double turns) => _cycle[(int)((turns - Math.Floor(turns)) * Points)];
}
