using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;
using NanoDustSwitch.Benchmarks;
using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;
using NanoDustSwitch.Benchmarks.Studies;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>
/// The benchmark's key figures in seconds, with bounds that leave room for the small numbers: they notice a detector that has
/// become worse. tests/benchmark measures them closely.
/// </summary>
[TestClass]
public sealed class DetectionTests
{
    private const double Hours = 2;
    private const int Trials = 240;
    private const double PerYear = 1 / Bound.Year;

    private static readonly Bench s_bench = new(isQuick: true, [], (_, _) => { });

    [TestMethod]
    [DataRow(2000, 0.17)]
    [DataRow(1000, 0.25)]
    public void A_small_tool_is_found_in_two_cycles_at_one_false_start_a_year(int rate, double amperes)
    {
        NoiseStudy noise = NoiseStudy.Run(s_bench, rate, NoiseKind.White, 1, Hours, () => [new FastLane()]);
        OnsetStudy tools = Tools(rate, 0.05, [noise.Law(0).Level(PerYear)], () => [new FastLane()], 0.12, 0.4);
        Assert.IsLessThan(amperes, tools.Smallest(0, 2 / Bench.Hertz));
    }

    [TestMethod]
    [DataRow(2000)]
    [DataRow(1000)]
    public void One_window_loses_little_to_the_best_possible(int rate)
    {
        NoiseStudy noise = NoiseStudy.Run(s_bench, rate, NoiseKind.White, 1, Hours, () => [new FastLane()]);
        OnsetStudy tools = Tools(rate, 0.05, [1], () => [new FastLane()], 0.08, 0.3);
        double best = Bound.Amperes(rate * new FastLane().Window, RateFindings.FalseAlarm);
        double decibels = 20 * Math.Log10(tools.SmallestToReach(0, noise.Reached(0, RateFindings.FalseAlarm)) / best);
        Assert.IsLessThan(2.1, decibels);
    }

    [TestMethod]
    public void The_slow_lane_finds_a_tenth_of_an_ampere_in_four_tenths_of_a_second()
    {
        const int Rate = 1000;
        NoiseStudy noise = NoiseStudy.Run(s_bench, Rate, NoiseKind.White, 1, 2 * Hours, () => [new SlowLaneMethod()]);
        OnsetStudy tools = Tools(Rate, 0.4, [noise.Law(0).Level(PerYear)], () => [new SlowLaneMethod()], 0.04, 0.2);
        Assert.IsLessThan(0.1, tools.Smallest(0, 0.4));
    }

    [TestMethod]
    [DataRow(0.5, 0.8, 1.3)]
    [DataRow(5.0, 0.5, 0.8)]
    public void The_command_comes_within_a_cycle_or_little_more(double amperes, double median, double most)
    {
        int half = (int)(amperes * 500);
        DelayStudy delay = DelayStudy.Run(
            s_bench, 2000, Bench.Hertz, amperes, Trials, () => [new CoreDecider(half, half * 6 / 10)]);
        Assert.IsLessThan(median, delay.Start(0, 0.5) * Bench.Hertz);
        Assert.IsLessThan(most, delay.Start(0, 0.99) * Bench.Hertz);
    }

    // The tail is carried on to a year from hours: for two methods its law is known.
    [TestMethod]
    public void The_level_of_one_false_start_a_year_is_that_of_the_known_law()
    {
        const int Rate = 1000;
        NoiseStudy noise = NoiseStudy.Run(
            s_bench, Rate, NoiseKind.White, 1, 3 * Hours, () => [new HalfSecondMaximum(), new CycleRms(Rate)]);

        // A reading beyond on either side.
        double reading = -Normal.InvCDF(0, 1, PerYear / (2 * Rate)) / Math.Sqrt(2) * Line.NoiseAmperes;
        Assert.AreEqual(reading, noise.Law(0).Level(PerYear), 0.04 * reading);

        // Squares about their own mean: χ² of one degree of freedom less than there are readings; 50 cycles a second.
        const int Readings = Rate / 50;
        double square = Brent.FindRoot(
            x => Math.Log(SpecialFunctions.GammaUpperRegularized((Readings - 1) / 2.0, x / 2) / (PerYear / 50)), 20, 150);
        double rms = Math.Sqrt(square / Readings) * Line.NoiseAmperes;
        Assert.AreEqual(rms, noise.Law(1).Level(PerYear), 0.02 * rms);
    }

    private static OnsetStudy Tools(int rate, double horizon, double[] levels, Func<Method[]> make, double least, double most) =>
        OnsetStudy.Run(
            s_bench,
            rate,
            Bench.Hertz,
            Shape.Sine(),
            Spend.Quick.Currents(least, most),
            Trials,
            horizon,
            levels,
            make);
}
