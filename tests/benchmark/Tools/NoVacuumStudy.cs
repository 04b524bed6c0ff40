using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Benchmarks.Starts;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>
/// How often the vacuum follows a load that needs none, and how often it does not follow a tool that is taken for that load.
/// </summary>
internal static class NoVacuumStudy
{
    private const int Few = 3;
    private const int More = 6;
    private const int Starts = 10;
    private const double RunSeconds = 3.5;
    private const double Outside = 1.25;
    private const double Least = 0.8;
    private const double Most = 12;

    /// <summary>Tries loads and tools.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <param name="loads">How many compressors and heaters.</param>
    /// <param name="tools">How many tools of other kinds or currents.</param>
    /// <returns>The figures.</returns>
    public static List<StudyRow> Run(Bench bench, int loads, int tools)
    {
        (ToolBook Book, ShopKind Kind, int Hertz, int Pace, int[] Followed)[] marked =
            new (ToolBook, ShopKind, int, int, int[])[loads];
        bench.InParallel("loads that need no vacuum", loads, (i, random) => marked[i] = Mark(i, random));
        (ShopKind Kind, int Hertz, int Pace, ToolFigures[] Seen)[] others = new (ShopKind, int, int, ToolFigures[])[tools];
        bench.InParallel("tools", tools, (i, random) => others[i] = Other(i, random));
        int pairs = 0;
        int swallowed = 0;
        foreach ((ToolBook book, ShopKind kind, int hertz, int pace, _) in marked)
        {
            ToolGuess guess = new(book);
            foreach ((ShopKind other, int otherHertz, int otherPace, ToolFigures[] seen) in others)
            {
                if (!other.IsTransformer && hertz == otherHertz && pace == otherPace
                    && (!other.IsLike(kind) || IsOutside(book, seen.Length == 0 ? 0 : seen[^1].Level)))
                {
                    pairs++;
                    swallowed += seen.Length > 0 && NeedsNone(guess, seen[^1]) ? 1 : 0;
                }
            }
        }

        int later = Starts - More;
        return
        [
            new("no vacuum: it starts all the same, after six starts", loads * later,
                100.0 * marked.Sum(one => one.Followed[More..].Sum()) / (loads * later), 2, 0.5, "%"),
            new("… after three", loads, 100.0 * marked.Sum(one => one.Followed[Few]) / loads, 10, 0.5, "%"),
            new("a tool of another kind or a quarter outside in current, swallowed: of 10,000", pairs,
                10_000.0 * swallowed / Math.Max(1, pairs), 1, 0),
        ];
    }

    private static (ToolBook Book, ShopKind Kind, int Hertz, int Pace, int[] Followed) Mark(int number, ShopRandom random)
    {
        (int hertz, int pace) = Place(number);
        ToolTrial trial = new(StartStudy.Paces[pace], random);
        ShopKind kind = number / 4 % 2 == 0 ? ShopKind.Compressor : ShopKind.Heater;
        ShopTool load = new(kind, new LoadDraw(random).Even(Least, Most), hertz, random);
        VacuumControl vacuum = trial.Core.Vacuum;
        int[] followed = new int[Starts];
        for (int start = 0; start < Starts; start++)
        {
            load.Begin(false);
            for (double end = trial.Seconds + RunSeconds; trial.Seconds < end;)
            {
                trial.Run(0.02, load);
                followed[start] |= vacuum.WantsVacuum ? 1 : 0;
            }

            trial.Run(0.5);

            // A person says so as soon as the list shows it, and again where it is listed a second time.
            int place = vacuum.Guess.Learned;
            if (start + 1 >= Few && followed[start] == 1 && place >= 0 && vacuum.Book.IsKnown(place))
            {
                vacuum.Book[place, ToolFigure.Wish] = ToolBook.NoVacuum;
            }
        }

        return (vacuum.Book, kind, hertz, pace, followed);
    }

    private static (ShopKind Kind, int Hertz, int Pace, ToolFigures[] Seen) Other(int number, ShopRandom random)
    {
        (int hertz, int pace) = Place(number);
        ToolTrial trial = new(StartStudy.Paces[pace], random);
        ShopKind kind = ShopKind.All[(int)(random.NextDouble() * ShopKind.All.Length)];
        ShopTool tool = new(kind, new LoadDraw(random).Even(Least, Most), hertz, random);
        tool.Begin(true);
        List<ToolFigures> seen = [];
        ToolFigures now = trial.Core.Vacuum.Surge.Seen;
        for (double end = trial.Seconds + RunSeconds; trial.Seconds < end;)
        {
            trial.Run(0.02, tool);
            if (now.Level < int.MaxValue && (seen.Count == 0 || seen[^1].Level != now.Level))
            {
                ToolFigures copy = new();
                copy.Height = now.Height;
                copy.After = now.After;
                copy.Level = now.Level;
                copy.Third = now.Third;
                copy.Half = now.Half;
                copy.Length = now.Length;
                copy.Knee = now.Knee;
                copy.First = now.First;
                copy.FirstAfter = now.FirstAfter;
                seen.Add(copy);
            }
        }

        // A motor whose rotor is held settles at nothing.
        return (kind, hertz, pace, tool.IsStalled ? [] : [.. seen]);
    }

    private static bool IsOutside(ToolBook book, int level)
    {
        for (int i = 0; i < ToolBook.Places; i++)
        {
            if (book[i, ToolFigure.Wish] == ToolBook.NoVacuum && level * Outside >= book[i, ToolFigure.Least]
                && level <= Outside * book[i, ToolFigure.Most])
            {
                return false;
            }
        }

        return true;
    }

    private static bool NeedsNone(ToolGuess guess, ToolFigures seen)
    {
        guess.Begin(0);
        guess.Ask(false);
        while (!guess.Step(seen))
        {
        }

        return guess.NeedsNone;
    }

    private static (int Hertz, int Pace) Place(int number) => (number % 2 == 0 ? 50 : 60, number / 2 % 2);
}
