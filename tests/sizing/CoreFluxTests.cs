using MathNet.Numerics.Integration;
using NanoDustSwitch.Sizing.Judging;

namespace NanoDustSwitch.SizingTests;

/// <summary>The flux of an offset start, by the integral of the voltage and by hand.</summary>
[TestClass]
public sealed class CoreFluxTests
{
    [TestMethod]
    [DataRow(60.0, 0.05)]
    [DataRow(50.0, 0.02)]
    [DataRow(50.0, 0.01)]
    public void The_flux_is_the_integral_of_the_voltage_over_turns_and_area(double hertz, double offset)
    {
        // 40 A: secondary current over 2000 turns through burden and winding, 47 + 100 ohm; a numerics library integrates.
        double peak = 40 * Math.Sqrt(2);
        CoreFlux flux = new(peak, 1, hertz, offset);
        double Voltage(double t) =>
            peak / 2000 * 147 * (Math.Exp(-t / offset) - Math.Cos(2 * Math.PI * hertz * t));
        double greatest = 0;
        double sum = 0;
        const double Step = 1e-4;
        for (int i = 0; i < 4000; i++)
        {
            sum += GaussLegendreRule.Integrate(Voltage, i * Step, (i + 1) * Step, 5);
            double tesla = sum / (2000 * 55e-6);
            Assert.AreEqual(tesla, flux.At((i + 1) * Step), 1e-6);
            greatest = Math.Max(greatest, tesla);
        }

        // The bound takes both parts at their greatest; they never quite meet.
        Assert.IsInRange(greatest - 1e-9, greatest * 1.05, flux.Greatest);
    }

    [TestMethod]
    public void Forty_amperes_fully_offset_need_about_two_tesla()
    {
        // By hand: 40 A x 1.414 / 2000 x 147 ohm = 4.16 V; x (50 + 2.65) ms = 0.219 Vs; / (2000 x 55 mm²) = 1.99 T.
        CoreFlux flux = new(40 * Math.Sqrt(2), 1, 60, 0.05);
        Assert.AreEqual(1.99, flux.Greatest, 0.005);
        Assert.AreEqual(0.1, flux.WithoutOffset, 0.005);

        string page = Repository.ReadText("hardware/sizing/README.md");
        StringAssert.Contains(page, $"= {flux.Greatest:0.00} T\n", StringComparison.Ordinal);

        // The factor 1 + wT of the standard.
        Assert.AreEqual(flux.WithoutOffset * (1 + (2 * Math.PI * 60 * 0.05)), flux.Greatest, 1e-9);
    }

    [TestMethod]
    public void A_start_fills_the_core_from_thirty_amperes_on()
    {
        // 1.5 T x 2000² x 55 mm² / (147 ohm x 52.65 ms) = 42.6 A peak, 30 A rms.
        Assert.IsTrue(double.IsPositiveInfinity(new CoreFlux(29 * Math.Sqrt(2), 1, 60, 0.05).FullAfter));
        double after = new CoreFlux(40 * Math.Sqrt(2), 1, 60, 0.05).FullAfter;
        Assert.AreEqual(0.075, after, 0.001);
        Assert.AreEqual(CoreFlux.SteelTesla, new CoreFlux(40 * Math.Sqrt(2), 1, 60, 0.05).At(after), 0.02);
        Assert.AreEqual(new CoreFlux(20, 2, 60, 0.05).Greatest, new CoreFlux(40, 1, 60, 0.05).Greatest, 1e-9);
    }

    [TestMethod]
    public void The_page_of_findings_says_when_the_core_is_full()
    {
        const string Line = "--vacuum 4A --supply 120V/60Hz --breaker 15A --cord 2m/14AWG --sensor transformer-100A --tool ";
        StringAssert.Contains(new Judged(Line + "8A").Finding("Sensor", "core").Working, "full after", StringComparison.Ordinal);
        StringAssert.Contains(
            new Judged(Line + "2A/universal").Finding("Sensor", "core").Working, "never full", StringComparison.Ordinal);
    }
}
