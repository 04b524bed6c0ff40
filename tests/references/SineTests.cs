using NanoDustSwitch.Detection;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>Rms of a sine from its peak-to-peak: swing / (2·√2). Textbook identity.</summary>
[TestClass]
public sealed class SineTests
{
    [TestMethod]
    [DataRow(45.0, 0.08)]
    [DataRow(50.0, 0.07)]
    [DataRow(60.0, 0.07)]
    [DataRow(65.0, 0.14)]
    public void The_swing_gives_the_rms_of_a_sine_at_any_phase(double hertz, double tolerance)
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

            Assert.AreEqual(Amperes * 1000, scale.FromSwing(window.Swing), tolerance * Amperes * 1000, $"{hertz} Hz, {degrees} degrees");
        }
    }
}
