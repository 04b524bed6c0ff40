using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Benchmarks.Starts;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using MathStatistics = MathNet.Numerics.Statistics.Statistics;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>
/// By how much sooner the vacuum starts because the tool is known, where it has no surge to be waited for: against a core of the
/// very same state that has forgotten all tools, with the very same readings.
/// </summary>
internal static class KnownDelayStudy
{
    private const int Starts = 9;
    private const int KnownFrom = 3;
    private const double RunSeconds = 3.5;

    // A surge that is over by then is over before the vacuum can start.
    private const double BriefSeconds = 0.1;

    // More than one bucket.
    private const double Longer = 1.5e-6 * Bucket.Microseconds;

    /// <summary>Lets the tools start.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="shops">How many shops.</param>
    /// <returns>The figures; what a brief surge must not exceed is a bound of our own.</returns>
    public static List<StudyRow> Run(Bench bench, int shops)
    {
        List<Kept>[] all = [.. new List<Kept>[shops]];
        bench.InParallel("starts without a surge", shops, (shop, random) => all[shop] = One(shop, random));
        double[] without = [.. all.SelectMany(one => one).Where(tool => tool.Most <= SurgeTruth.Inside).SelectMany(Later)];
        double[] brief = [.. all.SelectMany(one => one)
            .Where(tool => tool.Most > SurgeTruth.Inside && tool.MostAfter <= SurgeTruth.Inside).SelectMany(Later)];
        return
        [
            new("a known tool without a surge: later than without memory", without.Length, PercentLonger(without), 0, 0, "%"),
            new("… by how much, median", without.Length, MathStatistics.Median(without), 0, -0.1, "s"),
            new("… with a surge of less than 0.1 s: later", brief.Length, PercentLonger(brief), 1, 0, "%"),
        ];
    }

    private static List<double> Later(Kept tool) => tool.Later;

    private static double PercentLonger(double[] later) =>
        100.0 * later.Count(seconds => seconds > Longer) / Math.Max(1, later.Length);

    private static List<Kept> One(int number, ShopRandom random)
    {
        DrawnShop shop = new(number, random, ShopKind.MoreWithoutSurge);
        ToolTrial trial = new(shop.Pace, random);
        DetectionCore forgetful = ToolTrial.NewCore(shop.Pace);
        StateTape tape = new();
        Kept[] all = [.. shop.Tools.Select(_ => new Kept())];
        foreach (int i in NamingStudy.Order(random, Starts))
        {
            ShopTool tool = shop.Tools[i];
            bool isKnown = all[i].Starts++ >= KnownFrom;
            if (isKnown)
            {
                tape.Write();
                trial.Core.Exchange(tape);
                tape.Read();
                forgetful.Exchange(tape);
                forgetful.Vacuum.Book.Forget();
                trial.Other = forgetful;
            }

            tool.Begin(isKnown);
            double began = trial.Seconds;
            double known = RunSeconds;
            double unknown = RunSeconds;
            double most = 0;
            double mostAfter = 0;
            while (trial.Seconds < began + RunSeconds)
            {
                trial.Run(shop.Pace.BucketSeconds, tool);
                double now = trial.Seconds - began;
                known = trial.Core.Vacuum.WantsVacuum ? Math.Min(known, now) : known;
                unknown = forgetful.Vacuum.WantsVacuum ? Math.Min(unknown, now) : unknown;
                most = Math.Max(most, tool.RmsAmperes);
                mostAfter = now > BriefSeconds ? Math.Max(mostAfter, tool.RmsAmperes) : 0;
            }

            // A motor whose rotor is held settles at nothing.
            if (!tool.IsStalled)
            {
                all[i].Most = Math.Max(all[i].Most, most / tool.RmsAmperes);
                all[i].MostAfter = Math.Max(all[i].MostAfter, mostAfter / tool.RmsAmperes);
                if (isKnown)
                {
                    all[i].Later.Add(known - unknown);
                }
            }

            trial.Other = null;
            trial.Run(0.5);
        }

        return [.. all];
    }

    // What came of a tool's starts: the greatest true rms of a cycle, as a multiple of what it settled at, of all and from
    // BriefSeconds on; and by how many seconds later it was followed.
    private sealed class Kept
    {
        public int Starts { get; set; }

        public double Most { get; set; }

        public double MostAfter { get; set; }

        public List<double> Later { get; } = [];
    }
}
