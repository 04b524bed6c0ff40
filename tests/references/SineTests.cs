using NanoDustSwitch.Detection;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>
/// Rms of a sine from its peak-to-peak: swing / (2·√2). Textbook identity; the window over a cycle of 50 Hz shows other
/// frequencies rippling.
/// </summary>
[TestClass]
public sealed class SineTests
{
    [TestMethod]
    [DataRow(45.0, -0.08, 0.06)]
    [DataRow(50.0, -0.005, 0.005)]
    [DataRow(60.0, -0.17, 0.03)]
    [DataRow(65.0, -0.27, -0.02)]
    public void The_swing_gives_the_rms_of_a_sine_at_any_phase(double hertz, double least, double greatest)
    {
        const double Amperes = 5;
        SensorScale scale = new(23_500, 1, 806);
        double peak = Amperes * Math.Sqrt(2) * 23.5 / 0.806;
        for (int degrees = 0; degrees < 360; degrees += 5)
        {
            SwingWindow window = new();
            for (int bucket = 0; bucket < 40; bucket++)
            {
                int sum = 0;
                const int Readings = 25;
                for (int k = 0; k < Readings; k++)
                {
                    double seconds = ((bucket * Readings) + k + 0.5) / (Readings * 400.0);
                    sum += 1576 + (int)Math.Round(peak * Math.Sin((2 * Math.PI * hertz * seconds) + (degrees * Math.PI / 180)));
                }

                window.Add(sum, Readings);
            }

            double off = (scale.FromSwing(window.Swing) / (Amperes * 1000)) - 1;
            Assert.IsInRange(least, greatest, off, $"{hertz} Hz, {degrees} degrees");
        }
    }
}
