namespace NanoDustSwitch.Simulator.Shop;

/// <summary>The supply of the shop: a sine of steady frequency whose height may sag.</summary>
public sealed class Mains
{
    // Below this nothing is left that a motor could turn on: its switch may as well be off. Common practice, no source.
    private const double OutBelow = 0.1;

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
        double turn = cycles - Math.Floor(cycles);
        (double sine, double cosine) = Math.SinCos(turn * (2.0 * Math.PI));
        return new MainsPoint(turn, sine, cosine, VoltageFactor);
    }
}
