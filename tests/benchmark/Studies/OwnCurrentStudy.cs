using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>
/// The vacuum's own current on the tool's line: how soon after the tool's stop the relay is open for good, and how often ordinary
/// starts are disturbed or taken for it.
/// </summary>
internal static class OwnCurrentStudy
{
    private const double LongestWait = 240;
    private const int StartsInAShop = 15;

    // From one seed's shops to the next one's.
    private const int SeedStep = 10_000;

    /// <summary>Measures.</summary>
    /// <param name="bench">Seed, cores and progress.</param>
    /// <returns>The figures.</returns>
    public static List<StudyRow> Run(Bench bench)
    {
        // Coupled vacuums, a quarter as many that start softly, and ordinary starts.
        (int cases, int starts) = bench.IsQuick ? (60, 600) : (400, 30_000);
        int seed = (int)(SeedStep * bench.Seed);
        Coupled[] coupled = Each(bench, "own current", cases, i => Couple(seed + i, isSoft: false));
        Coupled[] soft = Each(bench, "own current, softly", cases / 4, i => Couple(seed + cases + i, isSoft: true));
        Ordinary[] shops = Each(
            bench, $"{starts:#,0} ordinary starts", (starts + StartsInAShop - 1) / StartsInAShop, i => Use(seed + i));
        double[] large = [.. coupled.Where(one => one.IsLarge).Select(one => one.Seconds).Order()];
        double[] small = [.. coupled.Where(one => !one.IsLarge).Select(one => one.Seconds).Order()];
        int all = shops.Sum(one => one.Starts);
        int late = shops.Sum(one => one.LateStarts);
        return
        [
            new("own current, a tenth of the tool's or more: relay kept open after the tool's stop, 99 %", large.Length,
                Quantile(large, 0.99), 30, 15, "s"),
            new("own current, smaller shares: relay kept open after the tool's stop, all", small.Length,
                small.DefaultIfEmpty(0).Max(), 180, 60, "s"),
            new("own current of vacuums that start softly, in the first start, after the tool's stop, all", soft.Length,
                soft.Select(one => one.Seconds).DefaultIfEmpty(0).Max(), 180, 60, "s"),
            new("own current claimed in ordinary starts", all, shops.Sum(one => one.Claims), 0, 0),
            new("ordinary starts from the fourth on with a look", late,
                100.0 * shops.Sum(one => one.LateLooks) / late, 1, 0.2, "%"),
        ];
    }

    /// <summary>Plays a shop in which the vacuum keeps itself running.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="isSoft">Whether the vacuum starts softly.</param>
    /// <returns>What came of it.</returns>
    public static Coupled Couple(int seed, bool isSoft)
    {
        CoupledShop shop = new(
            seed, (random, stop) => 1.1 * stop * Math.Pow(8 / (1.1 * stop), random.NextDouble()), isSoft);
        bool isLarge = shop.Own >= 0.1 * shop.ToolAmperes;
        shop.Tool.Start(shop.Now);
        shop.RunUntil(() => shop.Core.IsRelayClosed, 5);
        shop.Work(shop.Between(1, 60));
        shop.Tool.Stop(shop.Now);
        long stop = shop.Now;
        bool isOver = shop.RunUntil(
            () => shop.IsClaimed || (shop.Core.Vacuum.State == VacuumState.Idle && shop.Now - shop.Core.Vacuum.Since > 2_000_000),
            LongestWait);
        return new Coupled(isLarge, isOver ? (shop.Now - stop) / 1e6 : double.PositiveInfinity, shop.IsClaimed, shop.ToString());
    }

    /// <summary>Plays a shop in which the sensor sees too little of the vacuum to matter.</summary>
    /// <param name="seed">The seed.</param>
    /// <returns>What came of it.</returns>
    public static Ordinary Use(int seed)
    {
        CoupledShop shop = new(seed, (random, stop) => random.Next(2) == 0 ? 0 : 0.6 * stop * random.NextDouble());
        int claims = 0;
        int late = 0;
        for (int i = 0; i < StartsInAShop; i++)
        {
            int before = shop.Looks;
            Start(shop);
            if (shop.IsClaimed)
            {
                claims++;
                shop.Clear();
            }

            late += i >= 3 && shop.Looks > before ? 1 : 0;
        }

        return new Ordinary(StartsInAShop, StartsInAShop - 3, late, claims, shop.ToString());
    }

    private static T[] Each<T>(Bench bench, string name, int count, Func<int, T> one)
    {
        T[] results = new T[count];
        bench.InParallel(name, count, (i, _) => results[i] = one(i));
        return results;
    }

    private static void Start(CoupledShop shop)
    {
        shop.Tool.Load = shop.Between(0.4, 0.7);
        shop.Tool.Start(shop.Now);
        shop.RunUntil(() => shop.Core.IsRelayClosed, 5);
        shop.Run(shop.Between(0, 1));
        shop.Work(shop.Between(1, 20));
        shop.Tool.Load = shop.Between(0.35, 0.7);
        shop.Run(shop.Random.Next(5) == 0 ? shop.Between(60, 120) : shop.Between(0, 8));
        if (shop.Random.Next(4) == 0)
        {
            // It runs down under current, as some electronics let it.
            for (int i = 0; i < 20; i++)
            {
                shop.Tool.Load *= 0.9;
                shop.Run(0.1);
            }
        }

        shop.Tool.Stop(shop.Now);
        shop.RunUntil(() => !shop.Core.IsRelayClosed, 70);
        shop.Run(shop.Between(1, 5));
    }

    private static double Quantile(double[] sorted, double part) =>
        sorted.Length == 0 ? 0 : sorted[Math.Min(sorted.Length - 1, (int)Math.Ceiling(part * sorted.Length) - 1)];

    /// <summary>What came of a coupled vacuum.</summary>
    /// <param name="IsLarge">Whether the share is a tenth of the tool's current or more.</param>
    /// <param name="Seconds">From the tool's stop until the relay is open for good.</param>
    /// <param name="IsClaimed">Whether the fault was raised.</param>
    /// <param name="What">What was in the shop.</param>
    internal sealed record Coupled(bool IsLarge, double Seconds, bool IsClaimed, string What);

    /// <summary>What came of ordinary starts.</summary>
    /// <param name="Starts">Starts.</param>
    /// <param name="LateStarts">Starts from the tool's fourth on.</param>
    /// <param name="LateLooks">Those of them with a look.</param>
    /// <param name="Claims">Claims, which are wrong.</param>
    /// <param name="What">What was in the shop.</param>
    internal sealed record Ordinary(int Starts, int LateStarts, int LateLooks, int Claims, string What);
}
