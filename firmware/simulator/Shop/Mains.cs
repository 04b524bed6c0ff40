namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The supply of the shop: a sine of steady frequency whose height may sag. An inverter generator's frequency wanders; its
/// voltage, and that of a grid with many rectifiers on it, is flattened at the top.
/// </summary>
public sealed class Mains
{
    // Below this nothing is left that a motor could turn on: its switch may as well be off. Common practice, no source.
    private const double OutBelow = 0.1;

    // The fifth harmonic against the third; it flattens the top further. Common practice, no source.
    private const double FifthOfThird = -1.0 / 3.0;

    private readonly double _cyclesPerMicrosecond;
    private readonly double _turnAtZero;

    /// <summary>Connects the supply.</summary>
    /// <param name="hertz">Frequency, 45 to 65 Hz.</param>
    /// <param name="volts">Voltage, V rms, above 0.</param>
    /// <param name="degreesAtZero">Angle of the voltage at time 0, degrees; 0 is a rising zero crossing.</param>
    public Mains(double hertz, double volts, double degreesAtZero)
    {
        if (!(hertz >= 45.0 && hertz <= 65.0))
        {
            throw new ArgumentOutOfRangeException(nameof(hertz), "45 to 65 Hz");
        }

        if (!(volts > 0.0 && volts <= 1000.0))
        {
            throw new ArgumentOutOfRangeException(nameof(volts), "above 0 and at most 1000 V");
        }

        Hertz = hertz;
        Volts = volts;
        _cyclesPerMicrosecond = hertz * 1e-6;
        double turns = degreesAtZero / 360.0;
        _turnAtZero = turns - Math.Floor(turns);
    }

    /// <summary>Frequency, Hz.</summary>
    public double Hertz { get; }

    /// <summary>Nominal voltage, V rms.</summary>
    public double Volts { get; }

    /// <summary>How far the frequency wanders to either side, Hz; 0 by default.</summary>
    public double WanderHertz { get; set; }

    /// <summary>How long it takes for the frequency to wander up, down and back, s.</summary>
    public double WanderSeconds { get; set; } = 60.0;

    /// <summary>
    /// Third harmonic of the voltage against its fundamental, 0 to 0.1; 0 by default. It flattens the top. European grids may
    /// have 0.05 (EN 50160, from memory).
    /// </summary>
    public double Flattening { get; set; }

    /// <summary>Voltage now as a part of nominal: 1 is nominal, 0.7 a deep dip, 0 an outage.</summary>
    public double VoltageFactor { get; internal set; } = 1.0;

    /// <summary>Whether there is no voltage to speak of: below a tenth of nominal.</summary>
    public bool IsOut => VoltageFactor < OutBelow;

    /// <summary>Where the voltage stands.</summary>
    /// <param name="now">Virtual time, µs, 0 or later.</param>
    /// <returns>The point of the cycle.</returns>
    public MainsPoint At(long now)
    {
        double cycles = (now * _cyclesPerMicrosecond) + _turnAtZero;
        if (WanderHertz != 0.0)
        {
            // The frequency wanders as a sine, so this is its integral.
            double turns = 2.0 * Math.PI / WanderSeconds;
            cycles += WanderHertz / turns * (1.0 - Math.Cos(turns * now * 1e-6));
        }

        double turn = cycles - Math.Floor(cycles);
        (double sine, double cosine) = Math.SinCos(turn * (2.0 * Math.PI));
        if (Flattening != 0.0)
        {
            (sine, cosine) = (Flattened(sine, Flattening), Flattened(cosine, Flattening));
        }

        return new MainsPoint(turn, sine, cosine, VoltageFactor);
    }

    // Third and fifth harmonic of a sine are polynomials in it (textbook). The cosine is the sine a quarter of a turn ahead, so
    // it is flattened alike.
    internal static double Flattened(double s, double flattening)
    {
        double square = s * s;
        double third = s * (3.0 - (4.0 * square));
        double fifth = s * (5.0 + (square * (-20.0 + (16.0 * square))));
        return s + (flattening * (third + (FifthOfThird * fifth)));
    }
}
