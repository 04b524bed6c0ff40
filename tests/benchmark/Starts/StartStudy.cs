using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using MathStatistics = MathNet.Numerics.Statistics.Statistics;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>
/// Six tools, one of each kind, start in random order on one core that learns them; many times over. Once the box loses its
/// power: the next core has of the tools what flash keeps.
/// </summary>
internal sealed class StartStudy
{
    /// <summary>Starts of each tool.</summary>
    public const int StartsATool = 9;

    /// <summary>From its fourth start on a tool counts as known.</summary>
    public const int KnownFrom = 3;

    private const double MostOffHertz = 0.2;

    private readonly Dictionary<(string Kind, Which Which), List<Started>> _found = [];

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
        List<(int Kind, int Pace, Which Which, Started Started)>[] all = [.. new List<(int, int, Which, Started)>[groups]];
        bench.InParallel($"{groups * kinds.Length * StartsATool:#,0} starts", groups, (group, random) =>
            all[group] = Group(kinds, group, random));
        foreach ((int kind, int pace, Which which, Started started) in all.SelectMany(one => one))
        {
            foreach (string name in new[] { kinds[kind].Name, Key(kinds[kind].Name, pace) })
            {
                study._found.TryAdd((name, which), []);
                study._found[(name, which)].Add(started);
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
    /// <param name="which">Which starts.</param>
    /// <returns>The number.</returns>
    public int Count(string kind, Which which) => Of(kind, which).Count;

    /// <summary>At how many of a hundred starts the command came above a multiple of the settled current.</summary>
    /// <param name="kind">Of which kind.</param>
    /// <param name="which">Which starts.</param>
    /// <param name="multiple">The multiple.</param>
    /// <returns>Percent.</returns>
    public double Above(string kind, Which which, double multiple)
    {
        List<Started> starts = Of(kind, which);
        return 100.0 * starts.Count(start => start.Above > multiple) / starts.Count;
    }

    /// <summary>What a part of the delays after the onset does not exceed.</summary>
    /// <param name="kind">Of which kind.</param>
    /// <param name="which">Which starts.</param>
    /// <param name="part">The part, 0 to 1.</param>
    /// <returns>Seconds.</returns>
    public double Delay(string kind, Which which, double part) =>
        MathStatistics.Quantile(Of(kind, which).Select(start => start.Delay), part);

    /// <summary>
    /// What a part of the delays after the current has come within a tenth of its settled value does not exceed.
    /// </summary>
    /// <param name="kinds">Of which kinds, together.</param>
    /// <param name="which">Which starts.</param>
    /// <param name="part">The part, 0 to 1.</param>
    /// <returns>Seconds.</returns>
    public double AfterNear(IEnumerable<string> kinds, Which which, double part) =>
        MathStatistics.Quantile(kinds.SelectMany(kind => Of(kind, which)).Select(start => start.AfterNear), part);

    private static List<(int Kind, int Pace, Which Which, Started Started)> Group(
        StartKind[] kinds, int group, ShopRandom random)
    {
        List<(int, int, Which, Started)> all = [];
        int pace = group % Paces.Length;
        double hertz = (group / Paces.Length % 2 == 0 ? 50 : 60) + (MostOffHertz * ((2 * random.NextDouble()) - 1));
        StartTrial trial = new(Paces[pace], hertz, random);
        StartLoad[] loads = [.. kinds.Select(kind => kind.Draw(random, hertz))];
        int[] seen = new int[kinds.Length];
        int[] order = Shuffled(kinds.Length, random);

        // With half of all starts before it, most tools are known by then.
        int cut = order.Length / 2;
        HashSet<int> cutOff = [];
        for (int i = 0; i < order.Length; i++)
        {
            if (i == cut)
            {
                trial = new StartTrial(Paces[pace], hertz, random, trial.Core);
                cutOff = [.. Enumerable.Range(0, kinds.Length)];
            }

            int tool = order[i];
            loads[tool].Begin(random);
            Started started = trial.Start(loads[tool]);
            int before = seen[tool]++;
            bool isAfterCut = cutOff.Remove(tool) && before >= KnownFrom;
            if (!started.IsStalled && (before == 0 || before >= KnownFrom))
            {
                all.Add((tool, pace, before == 0 ? Which.First : Which.Later, started));
                if (isAfterCut)
                {
                    all.Add((tool, pace, Which.AfterCut, started));
                }
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

    private List<Started> Of(string kind, Which which) => _found[(kind, which)];
}
