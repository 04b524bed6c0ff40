using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using MathStatistics = MathNet.Numerics.Statistics.Statistics;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>Six tools, one of each kind, start in random order on one core that learns them; many times over.</summary>
internal sealed class StartStudy
{
    /// <summary>Starts of each tool.</summary>
    public const int StartsATool = 9;

    /// <summary>From its fourth start on a tool counts as known.</summary>
    public const int KnownFrom = 3;

    private const double MostOffHertz = 0.2;

    private readonly Dictionary<string, List<Started>> _first = [];
    private readonly Dictionary<string, List<Started>> _later = [];

    /// <summary>Gets the paces of a board: ideal, the plan's middle, its slow end in long buckets.</summary>
    public static StartPace[] Paces { get; } =
    [
        new("ideal, 6,500 a second", 1 / 6500.0, 0, false),
        new("2,700 a second", 245e-6, 0.82e-3, false),
        new("1,300 a second", 480e-6, 1.6e-3, true),
    ];

    /// <summary>Lets the tools start.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="kinds">The kinds.</param>
    /// <param name="groups">How many tools of each.</param>
    /// <returns>What came of it.</returns>
    public static StartStudy Run(Bench bench, StartKind[] kinds, int groups)
    {
        StartStudy study = new();
        List<(int Kind, int Pace, bool IsFirst, Started Started)>[] all = [.. new List<(int, int, bool, Started)>[groups]];
        bench.InParallel($"{groups * kinds.Length * StartsATool:#,0} starts", groups, (group, random) =>
            all[group] = Group(kinds, group, random));
        foreach ((int kind, int pace, bool isFirst, Started started) in all.SelectMany(one => one))
        {
            Dictionary<string, List<Started>> to = isFirst ? study._first : study._later;
            foreach (string name in new[] { kinds[kind].Name, Key(kinds[kind].Name, pace) })
            {
                to.TryAdd(name, []);
                to[name].Add(started);
            }
        }

        return study;
    }

    /// <summary>Names a kind at a pace.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="pace">Place of the pace.</param>
    /// <returns>A name to ask by.</returns>
    public static string Key(string kind, int pace) => $"{kind}; {Paces[pace].Name}";

    /// <summary>How many starts there were.</summary>
    /// <param name="kind">Of which kind.</param>
    /// <param name="isFirst">Whether first ones, or later ones.</param>
    /// <returns>The number.</returns>
    public int Count(string kind, bool isFirst) => Of(kind, isFirst).Count;

    /// <summary>At how many of a hundred starts the command came above a multiple of the settled current.</summary>
    /// <param name="kind">Of which kind.</param>
    /// <param name="isFirst">Whether first ones, or later ones.</param>
    /// <param name="multiple">The multiple.</param>
    /// <returns>Percent.</returns>
    public double Above(string kind, bool isFirst, double multiple)
    {
        List<Started> starts = Of(kind, isFirst);
        return 100.0 * starts.Count(start => start.Above > multiple) / starts.Count;
    }

    /// <summary>What a part of the delays after the onset does not exceed.</summary>
    /// <param name="kind">Of which kind.</param>
    /// <param name="isFirst">Whether first ones, or later ones.</param>
    /// <param name="part">The part, 0 to 1.</param>
    /// <returns>Seconds.</returns>
    public double Delay(string kind, bool isFirst, double part) =>
        MathStatistics.Quantile(Of(kind, isFirst).Select(start => start.Delay), part);

    /// <summary>
    /// What a part of the delays after the current has come within a tenth of its settled value does not exceed.
    /// </summary>
    /// <param name="kinds">Of which kinds, together.</param>
    /// <param name="isFirst">Whether first ones, or later ones.</param>
    /// <param name="part">The part, 0 to 1.</param>
    /// <returns>Seconds.</returns>
    public double AfterNear(IEnumerable<string> kinds, bool isFirst, double part) =>
        MathStatistics.Quantile(kinds.SelectMany(kind => Of(kind, isFirst)).Select(start => start.AfterNear), part);

    private static List<(int Kind, int Pace, bool IsFirst, Started Started)> Group(
        StartKind[] kinds, int group, ShopRandom random)
    {
        List<(int, int, bool, Started)> all = [];
        int pace = group % Paces.Length;
        double hertz = (group / Paces.Length % 2 == 0 ? 50 : 60) + (MostOffHertz * ((2 * random.NextDouble()) - 1));
        StartTrial trial = new(Paces[pace], hertz, random);
        StartLoad[] loads = [.. kinds.Select(kind => kind.Draw(random, hertz))];
        int[] seen = new int[kinds.Length];
        foreach (int tool in Shuffled(kinds.Length, random))
        {
            loads[tool].Begin(random);
            Started started = trial.Start(loads[tool]);
            int before = seen[tool]++;
            if (!started.IsStalled && (before == 0 || before >= KnownFrom))
            {
                all.Add((tool, pace, before == 0, started));
            }
        }

        return all;
    }

    private static int[] Shuffled(int tools, ShopRandom random)
    {
        int[] order = [.. Enumerable.Range(0, tools * StartsATool).Select(i => i % tools)];
        for (int i = order.Length - 1; i > 0; i--)
        {
            int other = (int)((i + 1) * random.NextDouble());
            (order[i], order[other]) = (order[other], order[i]);
        }

        return order;
    }

    private List<Started> Of(string kind, bool isFirst) => (isFirst ? _first : _later)[kind];
}
