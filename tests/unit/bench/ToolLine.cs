namespace NanoDustSwitch.UnitTests;

/// <summary>
/// What a converter reads while a tool draws a sine of 50 Hz. The converter has 0.806 mV a count and gives 2,000 readings a
/// second. The sensor is a current transformer with 23.5 mV/A that rests at 1.27 V. There is one count of noise to either side.
/// </summary>
internal sealed class ToolLine
{
    public const int FullScale = 4095;
    public const int MicrovoltsACount = 806;
    public const int MicrovoltsAnAmpere = 23500;
    public const int Rest = 1576;
    public const int ReadingMicroseconds = 500;

    private const int ReadingsACycle = 40;
    private readonly double[] _cycle = new double[ReadingsACycle];
    private int _milliamperes;
    private double _peak;

    public ToolLine()
    {
        for (int i = 0; i < ReadingsACycle; i++)
        {
            _cycle[i] = Sine.Of(i / (double)ReadingsACycle);
        }
    }

    /// <summary>
    /// Whether the line swings at 90 Hz and not at 50 Hz, in bursts: one of 25 ms in 0.2 s, and a fifth of that between them.
    /// That is noise and no tool, and the slow lane does not see it.
    /// </summary>
    public bool IsRumble;

    /// <summary>Gets or sets the tool's rms current in mA.</summary>
    public int Milliamperes
    {
        get
        {
            return _milliamperes;
        }

        set
        {
            _milliamperes = value;
            _peak = PeakCounts(value);
        }
    }

    /// <summary>
    /// Gives the peak of a sine in counts, from its rms current in mA. The peak is the square root of 2 times the rms (textbook
    /// identity).
    /// </summary>
    public static double PeakCounts(int milliamperes)
    {
        return milliamperes * 1.4142135623730951 * MicrovoltsAnAmpere / (1000.0 * MicrovoltsACount);
    }

    public int At(long microseconds)
    {
        long number = microseconds / ReadingMicroseconds;
        int noise = (int)(number % 3) - 1;
        double peak = !IsRumble || number / 50 % 8 == 0 ? _peak : _peak / 5;
        int reading = (int)(Rest + (peak * _cycle[(int)((IsRumble ? number * 9 / 5 : number) % ReadingsACycle)]) + 0.5) + noise;
        return reading < 0 ? 0 : reading > FullScale ? FullScale : reading;
    }
}
