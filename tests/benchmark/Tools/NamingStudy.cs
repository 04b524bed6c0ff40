using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>How often a tool of a drawn shop is known again, from its fourth start on.</summary>
internal static class NamingStudy
{
    private const int Starts = 9;
    private const int KnownFrom = 3;
    private const double Looks = 0.05;
    private const int LooksAStart = 70;
    private const int AfterSteady = 10;
    private const double Steady = 0.03;

    /// <summary>Lets the tools start.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="shops">How many shops.</param>
    /// <returns>The figures.</returns>
    public static List<StudyRow> Run(Bench bench, int shops)
    {
        List<Named>[] all = [.. new List<Named>[shops]];
        bench.InParallel("drawn shops", shops, (shop, random) => all[shop] = One(shop, random));
        List<Named> named = [.. all.SelectMany(one => one)];
        List<Named> idle = [.. named.Where(one => !one.IsCutting && !one.Kind.DependsOnTheMoment)];
        return
        [
            new("idling starts, learned by itself: not named right", idle.Count, Percent(idle, one => !one.IsRight), 10, 3, "%"),
            new("… named by a person", idle.Count, Percent(idle, one => !one.IsRightByName), 5, 1, "%"),
            new("all starts: named wrongly", named.Count, Percent(named, one => one.IsWrong), 1, 0.2, "%"),
        ];
    }

    private static double Percent(List<Named> named, Predicate<Named> what) =>
        100.0 * named.Count(one => what(one)) / Math.Max(1, named.Count);

    private static List<Named> One(int number, ShopRandom random)
    {
        DrawnShop shop = new(number, random, ShopKind.All);
        ToolTrial trial = new(shop.Pace, random);
        ToolGuess guess = trial.Core.Vacuum.Guess;
        int[,] owners = new int[ToolBook.Places, DrawnShop.Size];
        int[] names = [.. Enumerable.Repeat(-1, ToolBook.Places)];
        int[] seen = new int[DrawnShop.Size];
        List<Named> all = [];
        int[] places = new int[LooksAStart];
        double[] rms = new double[LooksAStart];
        foreach (int i in Order(random, Starts))
        {
            ShopTool tool = shop.Tools[i];
            bool isKnown = seen[i]++ >= KnownFrom;
            tool.Begin(isKnown);
            for (int look = 0; look < LooksAStart; look++)
            {
                trial.Run(Looks, tool);
                places[look] = guess.Tool;
                rms[look] = tool.RmsAmperes;
            }

            int near = LooksAStart - 1;
            while (near > 0 && Math.Abs(rms[near] - rms[^1]) <= Steady * rms[^1])
            {
                near--;
            }

            int soon = places[Math.Min(near + AfterSteady, LooksAStart - 1)];
            int last = places[^1];
            if (isKnown)
            {
                bool isRight = soon >= 0 && Owner(owners, soon) == i;
                bool isWrong = (soon >= 0 && Owner(owners, soon) != i) || (last >= 0 && Owner(owners, last) != i);
                all.Add(new Named(tool.Kind, tool.IsCutting, isRight, soon >= 0 && names[soon] == i, isWrong));
            }

            trial.Run(0.5);
            if (guess.Learned >= 0)
            {
                int place = guess.Learned;
                if (trial.Core.Vacuum.Book[place, ToolFigure.Starts] == 1)
                {
                    for (int j = 0; j < DrawnShop.Size; j++)
                    {
                        owners[place, j] = 0;
                    }

                    names[place] = -1;
                }

                owners[place, i]++;
                if (trial.Core.Vacuum.Book.IsKnown(place) && names[place] < 0 && Owner(owners, place) == i)
                {
                    names[place] = i;
                }
            }
        }

        return all;
    }

    /// <summary>Tells which tool a place of the book belongs to.</summary>
    /// <param name="owners">How often each tool was learned for each place.</param>
    /// <param name="place">The place.</param>
    /// <returns>The tool that was learned most often.</returns>
    public static int Owner(int[,] owners, int place)
    {
        int best = 0;
        for (int i = 1; i < DrawnShop.Size; i++)
        {
            best = owners[place, i] > owners[place, best] ? i : best;
        }

        return best;
    }

    /// <summary>Draws in which order the tools of a shop start.</summary>
    /// <param name="random">All chance.</param>
    /// <param name="starts">How often each of them starts.</param>
    /// <returns>Places of tools.</returns>
    public static int[] Order(ShopRandom random, int starts)
    {
        int[] order = [.. Enumerable.Range(0, DrawnShop.Size * starts).Select(i => i % DrawnShop.Size)];
        for (int i = order.Length - 1; i > 0; i--)
        {
            int other = (int)((i + 1) * random.NextDouble());
            (order[i], order[other]) = (order[other], order[i]);
        }

        return order;
    }

    private sealed record Named(ShopKind Kind, bool IsCutting, bool IsRight, bool IsRightByName, bool IsWrong);
}
