using NanoDustSwitch.Benchmarks.Starts;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>Six tools, of different kind or a quarter apart in current, on a mains of 50 or 60 Hz.</summary>
internal sealed class DrawnShop
{
    /// <summary>How many tools.</summary>
    public const int Size = 6;

    private const double Apart = 1.25;
    private const double Least = 0.8;
    private const double Most = 12;

    /// <summary>Initializes a new instance of the <see cref="DrawnShop"/> class.</summary>
    /// <param name="number">Number of the shop, which tells pace and frequency.</param>
    /// <param name="random">All chance.</param>
    /// <param name="kinds">The kinds of tools.</param>
    public DrawnShop(int number, ShopRandom random, ShopKind[] kinds)
    {
        Hertz = (number / 2 % 2 == 0 ? 50 : 60) + (0.2 * ((2 * random.NextDouble()) - 1));
        Pace = StartStudy.Paces[number % 2];
        while (Tools.Count < Size)
        {
            ShopKind kind = kinds[(int)(random.NextDouble() * kinds.Length)];
            double amperes = new LoadDraw(random).Even(Least, Most);
            if (!Tools.Exists(tool => tool.Kind == kind && Ratio(tool.Amperes, amperes) < Apart))
            {
                Tools.Add(new ShopTool(kind, amperes, Hertz, random));
            }
        }
    }

    /// <summary>Gets the mains frequency.</summary>
    public double Hertz { get; }

    /// <summary>Gets the board's pace: ideal, or the middle of the plan.</summary>
    public StartPace Pace { get; }

    /// <summary>Gets the tools.</summary>
    public List<ShopTool> Tools { get; } = [];

    private static double Ratio(double one, double other) => Math.Max(one, other) / Math.Min(one, other);
}
