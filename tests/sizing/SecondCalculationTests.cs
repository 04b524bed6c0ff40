using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using NanoDustSwitch.Sizing.Trials;
using UnitsNet;

namespace NanoDustSwitch.SizingTests;

/// <summary>The program's sums a second time, by general libraries or by the firmware's own code.</summary>
[TestClass]
public sealed class SecondCalculationTests
{
    private const string Line = "--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --vacuum-circuit 15A --cord 2m/14AWG "
        + "--cord tool:50ft/16AWG --sensor transformer-100A";

    [TestMethod]
    [DataRow(1.2, 150, 1.2, BreakerCurve.NorthAmerican)]
    [DataRow(1.47, 150, 1.2, BreakerCurve.NorthAmerican)]
    [DataRow(2.0, 150, 1.2, BreakerCurve.NorthAmerican)]
    [DataRow(1.45, 120, 1.6, BreakerCurve.B)]
    [DataRow(2.55, 120, 1.6, BreakerCurve.C)]
    public void A_steady_overload_trips_when_an_equation_solver_says_so(
        double multiple, double timeConstant, double tripHeat, BreakerCurve curve)
    {
        // The model: one thermal mass, heated by the square of the current; Runge and Kutta's method by a numerics library.
        const double End = 400;
        const int Steps = 400_001;
        Vector<double>[] heat = RungeKutta.FourthOrder(
            Vector<double>.Build.Dense(1),
            0,
            End,
            Steps,
            (_, y) => Vector<double>.Build.Dense(1, ((multiple * multiple) - y[0]) / timeConstant));
        double expected = Array.FindIndex(heat, y => y[0] >= tripHeat) * End / (Steps - 1);

        Supply supply = new(
            ElectricPotential.FromVolts(curve == BreakerCurve.NorthAmerican ? 120 : 230), Frequency.FromHertz(50));
        Circuit circuit = new(supply, ElectricCurrent.FromAmperes(10), curve, Plugs.All[0]);
        BreakerTrial trial = new(circuit, Enumerable.Range(0, 1001).Select(i => (i * 0.01, multiple * 10)));
        Assert.AreEqual(expected, trial.SoonTrip, 0.5);
    }

    [TestMethod]
    public void The_drop_is_that_of_the_library_of_units()
    {
        // NEC Chapter 9 Table 8 (16 AWG from memory): ohm per 1000 ft.
        ElectricResistance loop = ElectricResistance.FromOhms(4.99 * 2 * 50 / 1000);
        ElectricPotential expected = ElectricCurrent.FromAmperes(12) * loop;
        CordPath path = CordPath.Of(Judged.OrderOf(Line)).First();
        Assert.AreEqual(expected.Volts, path.Drop.Volts, 1e-6);
        Assert.AreEqual(expected.Volts / 120 * 100, path.Part.Percent, 1e-6);
    }

    [TestMethod]
    public void Watts_become_amperes_as_in_plain_arithmetic()
    {
        Order order = Judged.OrderOf(Line.Replace("--tool 12A", "--tool 1.2kW"));
        Assert.AreEqual(1200.0 / 120 / 0.9, order.ToolCurrent.Amperes, 1e-9);
    }

    [TestMethod]
    [DataRow("transformer-100A", 1)]
    [DataRow("transformer-100A", 3)]
    [DataRow("hall-5A", 1)]
    [DataRow("hall-20A", 1)]
    [DataRow("hall-30A", 1)]
    public void Counts_are_those_of_the_firmwares_scale(string sensor, int turns)
    {
        Order order = Judged.OrderOf(Line.Replace("transformer-100A", sensor) + $" --turns {turns}");
        SensorSums sums = new(order);
        SensorScale scale = new((int)Math.Round(order.Sensor.MillivoltsPerAmpere * 1000), turns, 806);

        // A sine of 4 A rms, peak to peak.
        double counts = 4 * 2 * Math.Sqrt(2) * sums.CountsPerAmpere;
        Assert.AreEqual(4000, scale.FromPeakToPeak((int)Math.Round(counts)), 10);
    }

    [TestMethod]
    public void A_universal_motors_crest_is_that_of_the_shops_motor()
    {
        Mains mains = new(60, 120, 0);
        Tool motor = new(new ToolSpecification { RatedAmperes = 1 }, 60);
        motor.Start(0);
        double At(long now) => motor.Current(now, mains.At(now));
        for (long now = 0; now < 5_000_000; now += 1000)
        {
            At(now);
        }

        // The brushes' noise stands on single readings: the mean of 100 cycles, each of 100 readings, is without it.
        double[][] cycles =
        [
            .. Enumerable.Range(0, 100).Select(cycle => Enumerable.Range(0, 100)
                .Select(i => At(5_000_000 + (long)((cycle + (i / 100.0)) / 60 * 1e6)))
                .ToArray()),
        ];
        double[] mean = [.. Enumerable.Range(0, 100).Select(i => cycles.Average(cycle => cycle[i]))];
        double rms = Math.Sqrt(mean.Average(value => value * value));
        Assert.AreEqual(ToolKinds.CrestOf(ToolKind.Universal), mean.Max() / rms, 0.03);
    }

    [TestMethod]
    public void Six_times_covers_locked_rotors_up_to_letter_j()
    {
        // NEC Table 430.7(B), read: letter J up to 7.99 kVA a horsepower; the table's motors that a plug can feed.
        foreach (MotorRating row in MotorTable.Rows.Where(row => row.Horsepower <= 2))
        {
            double locked = row.Horsepower * 7.99 * 1000 / 115;
            Assert.IsLessThanOrEqualTo(6.0, locked / row.At115, row.Name);
        }
    }

    [TestMethod]
    [DataRow("14AWG", 2.08)]
    [DataRow("12AWG", 3.31)]
    [DataRow("10AWG", 5.26)]
    [DataRow("16AWG", 1.31)]
    [DataRow("18AWG", 0.823)]
    [DataRow("0.75mm2", 0.75)]
    [DataRow("1mm2", 1)]
    [DataRow("1.25mm2", 1.25)]
    [DataRow("1.5mm2", 1.5)]
    [DataRow("2mm2", 2)]
    [DataRow("2.5mm2", 2.5)]
    [DataRow("4mm2", 4)]
    public void Resistances_are_those_of_copper(string name, double squareMillimeters)
    {
        // Copper 0.01724 ohm mm²/m at 20 °C, strands and lay a few percent more (textbook figure; areas of AWG by its
        // definition).
        WireSize size = WireSizes.All.Single(each => each.Name == name);
        double solid = 0.01724 * WireSizes.At75 / squareMillimeters;
        Assert.IsInRange(solid * 0.98, solid * 1.16, size.OhmsPerMeter);
    }

    [TestMethod]
    public void The_heat_is_summed_as_by_hand()
    {
        // Two circuits: contact 10 mohm, wire 1 m of 14 AWG and 8 mohm of terminals, all at 10 A; (0.6 + 0.9) W / 0.7.
        HeatSums sums = new(Judged.OrderOf(Line));
        double wire = 3.14 / 304.8;
        double expected = (100 * (0.010 + 0.008 + wire)) + (1.5 / 0.7);
        Assert.AreEqual(expected, (double)sums.Total.Watts, 1e-6);

        // 300 x 220 x 120 mm: top and four walls.
        double area = (0.3 * 0.22) + (2 * 0.12 * 0.52);
        Assert.AreEqual(expected / (3.5 * area), sums.Rise.Kelvins, 1e-6);
    }
}
