namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>
/// What a converter of 0.806 mV a count reads behind a sensor of 23.5 mV/A at rest on 1.27 V, with the noise of four counts that
/// such a converter shows.
/// </summary>
internal static class ToolWave
{
    private const int Rest = 1576;
    private const int FullScale = 4095;
    private const double CountsAnAmpere = 23.5 / 0.806;
    private const double NoiseCounts = 4;
    private const double Hertz = 60;

    /// <summary>No tool runs.</summary>
    public static int[] Quiet(int readingMicroseconds, int seconds) => Tool(0, readingMicroseconds, seconds);

    /// <summary>A tool draws a sine.</summary>
    public static int[] Tool(double amperes, int readingMicroseconds, int seconds)
    {
        var random = new Random(1);
        var readings = new int[seconds * 1_000_000 / readingMicroseconds];
        for (var i = 0; i < readings.Length; i++)
        {
            var sine = Math.Sin(2 * Math.PI * Hertz * i * readingMicroseconds / 1e6);
            var reading = Rest + (amperes * Math.Sqrt(2) * CountsAnAmpere * sine) + Noise(random);
            readings[i] = (int)Math.Clamp(Math.Round(reading), 0, FullScale);
        }

        return readings;
    }

    // Twelve even ones have a variance of 1 and make nearly a normal one.
    private static double Noise(Random random) => NoiseCounts * (Enumerable.Range(0, 12).Sum(_ => random.NextDouble()) - 6);
}
