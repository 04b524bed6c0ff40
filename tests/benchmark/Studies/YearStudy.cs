using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>
/// False starts a year at the lowest level that <c>teach</c> stores, when the noise grows by a quarter afterwards: the laws of
/// both lanes at the levels that the core then has.
/// </summary>
internal sealed class YearStudy
{
    private const double Grown = 1.25;
    private const double QuietSeconds = 5;
    private const double SettleSeconds = 120;

    /// <summary>Gets the mean of the fast lane's level, A.</summary>
    public double FastLevel { get; private set; }

    /// <summary>Gets the level at which the fast lane would start once a year, A.</summary>
    public double YearLevel { get; private set; }

    /// <summary>Gets the mean of what the quiet line showed when it was taught, A.</summary>
    public double Quiet { get; private set; }

    /// <summary>Gets the mean of the lowest level of a lane, A.</summary>
    public double LeastLevel { get; private set; }

    /// <summary>Gets the false starts a year, in the mean over all teachings.</summary>
    public double Starts { get; private set; }

    /// <summary>Gets the false starts a year of the fast lane.</summary>
    public double FastStarts { get; private set; }

    /// <summary>Teaches and waits.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="rate">Readings a second.</param>
    /// <param name="kind">The noise.</param>
    /// <param name="spend">How much is looked at.</param>
    /// <returns>What came of it.</returns>
    public static YearStudy Run(Bench bench, int rate, NoiseKind kind, Spend spend)
    {
        NoiseStudy noise = NoiseStudy.Run(bench, rate, kind, Grown, spend.KindHours, MethodSet.Ours);
        TailLaw fast = noise.Law(MethodSet.Fast);
        TailLaw slow = noise.Law(MethodSet.Slow);
        (double Quiet, double Fast, double Slow)[] levels = new (double, double, double)[spend.Teachings];
        bench.InParallel($"{spend.Teachings} teachings, {NoiseNames.Of(kind)}", spend.Teachings, (part, random) =>
            levels[part] = Teach(bench, rate, kind, random));
        return new YearStudy
        {
            YearLevel = fast.Level(1 / Bound.Year),
            Quiet = levels.Average(level => level.Quiet),
            FastLevel = levels.Average(level => level.Fast),
            LeastLevel = levels.Average(level => Math.Min(level.Fast, level.Slow)),
            FastStarts = levels.Average(level => fast.Rate(level.Fast)) * Bound.Year,
            Starts = levels.Average(level => fast.Rate(level.Fast) + slow.Rate(level.Slow)) * Bound.Year,
        };
    }

    private static (double Quiet, double Fast, double Slow) Teach(Bench bench, int rate, NoiseKind kind, ShopRandom random)
    {
        // The line as it is taught; the tool shows three times as much, the least that is not refused.
        int quiet = Greatest(new Line(rate, Bench.Hertz, kind, 1, random, bench.Recording));
        SettingValues delivered = new();
        TaughtLevels taught = new(
            quiet, quiet, quiet * TaughtLevels.ToolOverQuiet, delivered[SettingId.StartAt], delivered[SettingId.StopBelow]);
        CoreDecider decider = new(taught.StartAt, taught.StopBelow, quiet);
        Line line = new(rate, Bench.Hertz, kind, Grown, random, bench.Recording);
        int[] readings = new int[Line.MostReadings];
        while (line.Seconds < SettleSeconds)
        {
            decider.Accept(readings, line.Fill(readings));
        }

        // The core tells the lowest of its levels, and the fast lane's floor.
        DetectionCore core = decider.Core;
        int fast = Math.Max(taught.StartAt, core.NoiseMilliamperes * ToolLevels.StartPercent / 100);
        return (quiet / 1000.0, fast / 1000.0, core.StartMilliamperes / 1000.0);
    }

    // As the guide measures it: the greatest swing of its time.
    private static int Greatest(Line line)
    {
        FastLane lane = new();
        int[] readings = new int[Line.MostReadings];
        double greatest = 0;
        while (line.Seconds < QuietSeconds)
        {
            if (lane.Accept(readings, line.Fill(readings)))
            {
                greatest = Math.Max(greatest, lane.Swing);
            }
        }

        return (int)(greatest * 1000);
    }
}
