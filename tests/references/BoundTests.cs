using NanoDustSwitch.Benchmarks;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>The best possible detector that the benchmark compares with.</summary>
[TestClass]
public sealed class BoundTests
{
    // Peak over the rms of the noise for 90 %, computed from the same law by another library (scipy's ncx2).
    [TestMethod]
    [DataRow(16, 1e-4, 1.93)]
    [DataRow(33, 1e-4, 1.35)]
    [DataRow(66, 1e-4, 0.95)]
    [DataRow(33, 5e-10, 1.91)]
    [DataRow(66, 5e-10, 1.35)]
    [DataRow(133, 5e-10, 0.95)]
    public void Another_library_finds_the_same_peak(int readings, double falseAlarm, double peak) =>
        Assert.AreEqual(peak, Bound.Peak(readings, falseAlarm), 0.006);

    // Albersheim 1981, from memory: good to 0.2 dB between 10^-3 and 10^-7. For a single sample that holds from a detection of
    // 0.4 up; at 0.1 and 10^-3 the formula is 4 dB below the law.
    [TestMethod]
    public void Albersheims_formula_gives_the_same_to_a_fifth_of_a_decibel()
    {
        foreach (double falseAlarm in new[] { 1e-3, 1e-4, 1e-5, 1e-6, 1e-7 })
        {
            foreach (double detection in new[] { 0.4, 0.5, 0.6, 0.7, 0.8, 0.9 })
            {
                const int Readings = 33;
                double peak = Bound.Peak(Readings, falseAlarm, detection);
                double decibels = 10 * Math.Log10(Readings * peak * peak / 4);
                Assert.AreEqual(Albersheim(falseAlarm, detection), decibels, 0.2, $"{falseAlarm}, {detection}");
            }
        }
    }

    // The plan's figures, computed from that law.
    [TestMethod]
    [DataRow(2000, 0.124)]
    [DataRow(1000, 0.176)]
    public void In_two_cycles_of_60_Hz_it_finds_what_the_plan_says(int rate, double amperes) =>
        Assert.AreEqual(amperes, Bound.AmperesIn(rate, 2 / 60.0), 0.004);

    private static double Albersheim(double falseAlarm, double detection)
    {
        double a = Math.Log(0.62 / falseAlarm);
        double b = Math.Log(detection / (1 - detection));

        // One sample: that of a matched filter.
        return (6.2 + (4.54 / Math.Sqrt(1.44))) * Math.Log10(a + (0.12 * a * b) + (1.7 * b));
    }
}
