using NanoDustSwitch.Benchmarks.Starts;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>dump.</summary>
internal static class ToolsCommand
{
    private const double Apart = 1.25;

    public static int Run(int groups, long seed)
    {
        string? dump = Environment.GetEnvironmentVariable("DUST_DUMP");
        return dump == null
            ? Report.StudyTable.Print([.. NamingStudy.Run(new Bench(true, [], (_, _) => { }, seed), groups), .. NoVacuumStudy.Run(new Bench(true, [], (_, _) => { }, seed + 100), 96, 600)])
            : Dump(groups, seed);
    }

    public static int Dump(int groups, long seed)
    {
        Bench bench = new(true, [], (_, _) => { }, seed);
        List<string>[] all = [.. new List<string>[groups]];
        bench.InParallel("x", groups, (group, random) => all[group] = One(group, random));
        foreach (string line in all.SelectMany(one => one))
        {
            Console.WriteLine(line);
        }

        return 0;
    }

    private static List<string> One(int group, ShopRandom random)
    {
        List<string> lines = [];
        double hertz = (group / 2 % 2 == 0 ? 50 : 60) + (0.2 * ((2 * random.NextDouble()) - 1));
        ToolTrial trial = new(StartStudy.Paces[group % 2], random);
        List<ShopTool> tools = [];
        while (tools.Count < 6)
        {
            ShopKind kind = ShopKind.All[(int)(random.NextDouble() * ShopKind.All.Length)];
            double amperes = new LoadDraw(random).Even(0.8, 12);
            if (!tools.Exists(tool => tool.Kind == kind && Math.Max(tool.Amperes, amperes) / Math.Min(tool.Amperes, amperes) < Apart))
            {
                tools.Add(new ShopTool(kind, amperes, hertz, random));
            }
        }

        for (int start = 0; start < 9; start++)
        {
            for (int i = 0; i < 6; i++)
            {
                ShopTool tool = tools[i];
                tool.Begin(start >= 3);
                string first = "";
                ToolFigures seen = trial.Core.Vacuum.Surge.Seen;
                for (int t = 0; t < 700; t++)
                {
                    trial.Run(0.005, tool);
                    if (first.Length == 0 && t > 3 && seen.Length > 0)
                    {
                        first = $"{t * 5},{seen.Height},{seen.After},{seen.Level},{seen.Third},{seen.Half},{seen.Length}";
                    }
                }

                lines.Add(FormattableString.Invariant($"{group},{i},{tool.Kind.Name},{tool.Amperes:0.00},{start},{(tool.IsCutting ? 1 : 0)},{(first.Length > 0 ? first : "-1,0,0,0,0,0,0")},{seen.Height},{seen.After},{seen.Level},{seen.Third},{seen.Half},{seen.Length}"));
                trial.Run(0.5);
            }
        }

        return lines;
    }
}
