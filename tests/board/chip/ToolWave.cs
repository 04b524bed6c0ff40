namespace NanoDustSwitch.BoardTests;

/// <summary>
/// What the converter shows of the tool's line: a transformer of 23.5 mV/A about a rest of 1.27 V, a sine of 50 Hz, a count of
/// noise.
/// </summary>
internal sealed class ToolWave
{
    public const int Rest = 1576;

    private const double CountsAMilliampere = 1.4142135623730951 * 23.5 / 806;
    private const double RadiansAMicrosecond = 2 * Math.PI * 50 / 1000000;

    /// <summary>The tool's rms current in mA.</summary>
    public int Milliamperes { get; set; }

    public int At(long microseconds)
    {
        long noise = (microseconds / 100 % 3) - 1;
        return (int)Math.Round(Rest + (Milliamperes * CountsAMilliampere * Math.Sin(microseconds * RadiansAMicrosecond)) + noise);
    }
}
