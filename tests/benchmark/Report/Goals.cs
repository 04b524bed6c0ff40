using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;
using NanoDustSwitch.Benchmarks.Studies;

namespace NanoDustSwitch.Benchmarks.Report;

/// <summary>The figures that are wanted, and what came out.</summary>
internal static class Goals
{
    // Smallest tool in two cycles at a rate; the other shapes by so much more.
    private static readonly (int Rate, double Must, double Aim)[] s_inTwoCycles = [(2000, 0.17, 0.15), (1000, 0.25, 0.21)];

    private static readonly (string Shape, double Must, double Aim)[] s_shapes =
        [("sine", 1, 1), ("half-wave", 1.4, 1.3), ("1.5 ms pulses", 1.7, 1.5), ("20 % phase chop", 1.7, 1.5)];

    /// <summary>Compares.</summary>
    /// <param name="found">What was found.</param>
    /// <param name="method">Place among the short methods.</param>
    /// <returns>The smallest tools in two cycles: the worse of 50 and 60 Hz.</returns>
    public static IEnumerable<Goal> InTwoCycles(Findings found, int method) =>
        from rate in s_inTwoCycles
        from shape in s_shapes
        let value = found.Rates.Single(one => one.Rate == rate.Rate).InTwoCycles(shape.Shape, method)
        select new Goal(
            $"smallest tool in two cycles, {shape.Shape}, {rate.Rate:#,0} a second, A",
            value,
            rate.Must * shape.Must,
            rate.Aim * shape.Aim,
            "0.000");

    /// <summary>Compares.</summary>
    /// <param name="found">What was found.</param>
    /// <returns>All.</returns>
    public static List<Goal> All(Findings found)
    {
        RateFindings slow = found.Rates.Single(rate => rate.Rate == 1000);
        double inSlow = Math.Max(slow.Sine.Smallest(MethodSet.Slow, 0.4), slow.SineAt50.Smallest(MethodSet.Slow, 0.4));
        return
        [
            new(
                "loss to the bound, one window of a cycle, one in 10⁴, dB",
                found.Rates.Max(rate => rate.Loss(MethodSet.Fast)),
                2,
                0.5,
                "0.0"),
            .. InTwoCycles(found, MethodSet.Fast),
            new("smallest tool in 0.4 s, 1,000 a second, A", inSlow, 0.1, 0.08, "0.000"),
            new("delay at 0.5 A and up, median, cycles", Delay(found, 0.5, 0.5), 0.8, 0.6, "0.00"),
            new("delay at 0.5 A and up, 99 %, cycles", Delay(found, 0.5, 0.99), 1.3, 0.9, "0.00"),
            new("delay at 5 A and up, median, cycles", Delay(found, 5, 0.5), 0.5, 0.4, "0.00"),
            new("delay at 5 A and up, 99 %, cycles", Delay(found, 5, 0.99), 0.8, 0.6, "0.00"),
            .. found.Years.Select(
                year => new Goal($"false starts a year, {NoiseNames.Of(year.Key)}", year.Value.Starts, 1, 0.1, "G3")),
        ];
    }

    // The worst of the currents, rates and frequencies.
    private static double Delay(Findings found, double least, double part) =>
        found.Delays.Where(one => one.Key.Amperes >= least).Max(one => one.Value.Start(0, part) * one.Key.Hertz);
}
