using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>Two known tools run together, and one of them stops: is it named? And is a cut taken for a second tool?</summary>
internal static class TwoToolsStudy
{
    private const int Starts = 5;
    private const int Pairs = 8;
    private const int Alone = 2;
    private const int Cuts = 3;
    private const double SettledSeconds = 5;
    private const double AfterSeconds = 1;

    // How long a blade takes to enter the work, or to leave it: common practice, no source.
    private const double LeastRamp = 0.1;
    private const double MostRamp = 0.5;

    /// <summary>Lets the tools start and stop.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="shops">How many shops.</param>
    /// <returns>The figures; the last two have bounds of our own.</returns>
    public static List<StudyRow> Run(Bench bench, int shops)
    {
        List<Stop>[] all = [.. new List<Stop>[shops]];
        bench.InParallel("two tools together", shops, (shop, random) => all[shop] = One(shop, random));
        List<Stop> pairs = [.. all.SelectMany(one => one).Where(stop => stop.Second != null)];
        List<Stop> cuts = [.. all.SelectMany(one => one).Where(stop => stop.Second == null)];
        List<Stop> clear = [.. pairs.Where(stop => !stop.First.Kind.DependsOnTheMoment && !stop.Second!.Kind.DependsOnTheMoment)];
        return
        [
            new("two tools: the one that stops not named right", clear.Count, Percent(clear, stop => !stop.IsRight), 10, 2, "%"),
            new("… another one named", pairs.Count, Percent(pairs, stop => stop.IsWrong), 5, 0.2, "%"),
            new("a tool alone that cuts three times: a stop told", cuts.Count, Percent(cuts, stop => stop.IsWrong), 20, 1, "%"),
        ];
    }

    private static double Percent(List<Stop> stops, Predicate<Stop> what) =>
        100.0 * stops.Count(one => what(one)) / Math.Max(1, stops.Count);

    private static List<Stop> One(int number, ShopRandom random)
    {
        DrawnShop shop = new(number, random, ShopKind.All);
        ToolTrial trial = new(shop.Pace, random);
        ToolBook book = trial.Core.Vacuum.Book;
        int[,] owners = new int[ToolBook.Places, DrawnShop.Size];
        foreach (int i in NamingStudy.Order(random, Starts))
        {
            shop.Tools[i].Begin(false);
            trial.Run(SettledSeconds, shop.Tools[i]);
            trial.Run(0.5);
            int place = trial.Core.Vacuum.Guess.Learned;
            if (place >= 0)
            {
                for (int j = 0; j < DrawnShop.Size && book[place, ToolFigure.Starts] == 1; j++)
                {
                    owners[place, j] = 0;
                }

                owners[place, i]++;
            }
        }

        LoadDraw draw = new(random);
        List<Stop> all = [];
        for (int pair = 0; pair < Pairs; pair++)
        {
            int first = (int)(DrawnShop.Size * random.NextDouble());
            int second = (first + 1 + (int)((DrawnShop.Size - 1) * random.NextDouble())) % DrawnShop.Size;
            bool isSecond = random.NextDouble() < 0.5;
            ShopTool one = shop.Tools[first];
            ShopTool other = shop.Tools[second];
            one.Begin(false, other);
            trial.Run(draw.Between(SettledSeconds, 2 * SettledSeconds), one);
            trial.Stopped.Clear();
            other.Begin(false, one, true);
            trial.Run(draw.Between(SettledSeconds, 2 * SettledSeconds), one, other);
            bool isEarly = trial.Stopped.Count > 0;
            trial.Run(AfterSeconds, isSecond ? one : other);
            int right = isSecond ? second : first;
            bool isRight = !isEarly && trial.Stopped.Count == 1 && NamingStudy.Owner(owners, trial.Stopped[0]) == right;
            all.Add(new Stop(one, other, isRight, isEarly || (trial.Stopped.Count > 0 && !isRight)));
            trial.Run(0.5);
        }

        for (int cut = 0; cut < Alone; cut++)
        {
            ShopTool tool = shop.Tools[(int)(DrawnShop.Size * random.NextDouble())];
            if (!tool.Kind.IsMotor)
            {
                continue;
            }

            tool.Begin(false);
            trial.Run(SettledSeconds, tool);
            trial.Stopped.Clear();
            for (int i = 0; i < Cuts; i++)
            {
                tool.Cut(draw.Between(1.2, 3), draw.Between(LeastRamp, MostRamp));
                trial.Run(draw.Between(0.5, SettledSeconds), tool);
                if (i == Cuts - 1)
                {
                    tool.Cut(draw.Between(1.2, 3), draw.Between(LeastRamp, MostRamp));
                    trial.Run(draw.Between(0.5, SettledSeconds), tool);
                }

                tool.Cut(1, draw.Between(LeastRamp, MostRamp));
                trial.Run(draw.Between(0.5, SettledSeconds), tool);
            }

            all.Add(new Stop(tool, null, false, trial.Stopped.Count > 0));
            trial.Run(0.5);
        }

        return all;
    }

    // Second: null where the first one was alone, and cut.
    private sealed record Stop(ShopTool First, ShopTool? Second, bool IsRight, bool IsWrong);
}
