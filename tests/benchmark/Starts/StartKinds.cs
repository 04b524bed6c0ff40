using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>The kinds of tools whose starts are tried. Their currents are from 1 to 16 A, a third of them under 3 A.</summary>
internal static class StartKinds
{
    private const double Least = 1;
    private const double Small = 3;
    private const double Most = 16;

    /// <summary>Gets those of which figures are wanted.</summary>
    public static StartKind[] Wanted { get; } =
    [
        new("induction", (random, hertz) => Model(
            random, hertz, new LoadDraw(random).Induction(), Amperes(random), new LoadDraw(random).Between(0.3, 1))),
        new("universal", (random, hertz) => Model(random, hertz, new LoadDraw(random).Universal(), Amperes(random))),
        new("exponential, 0.03 to 0.3 s", Exponential),
        new("staged, 30 to 250 ms", (random, hertz) => Model(random, hertz, new LoadDraw(random).Staged(), Amperes(random))),
        new("transformer", (random, hertz) => Model(random, hertz, new LoadDraw(random).Transformer(), Amperes(random))),
        new("without a surge", WithoutSurge),
    ];

    /// <summary>Gets others, to see what they do.</summary>
    public static StartKind[] Others { get; } =
    [
        new("compressor", (random, hertz) => Model(random, hertz, new LoadDraw(random).Compressor(), Amperes(random))),
        new("universal, chopped", (random, hertz) => Model(random, hertz, new LoadDraw(random).Chopped(), Amperes(random))),
        new("universal, half-wave", (random, hertz) => Model(random, hertz, new LoadDraw(random).HalfWave(), Amperes(random))),
        new("rectifier", (random, hertz) => Model(random, hertz, new LoadDraw(random).Rectifier(), Amperes(random))),
        new("inverter-fed", (random, hertz) => Model(random, hertz, new LoadDraw(random).Inverter(), Amperes(random))),
        new("soft start", (random, hertz) => Model(random, hertz, new LoadDraw(random).SoftStart(), Amperes(random))),
        new("lamp", (random, hertz) => Model(random, hertz, new LoadDraw(random).Lamp(), Amperes(random))),
    ];

    /// <summary>Gets those of which a chart is drawn.</summary>
    public static StartKind[] Drawn { get; } =
        [Wanted[0], Others[0], Wanted[1], Wanted[3], Wanted[4], Others.Single(kind => kind.Name == "soft start")];

    private static ShapedLoad Exponential(ShopRandom random, double hertz)
    {
        LoadDraw draw = new(random);
        double amperes = Amperes(random);
        double above = draw.Even(1.5, 12) - 1;
        double seconds = draw.Even(0.03, 0.3);
        return new ShapedLoad(hertz, time => amperes * (1 + (above * Math.Exp(-time / seconds))));
    }

    // Heaters, soft starts, LED drivers.
    private static StartLoad WithoutSurge(ShopRandom random, double hertz)
    {
        double amperes = Amperes(random);
        return random.NextDouble() switch
        {
            < 1 / 3.0 => new ShapedLoad(hertz, _ => amperes),
            < 2 / 3.0 => Model(random, hertz, new LoadDraw(random).SoftStart(), amperes),
            _ => Model(random, hertz, new ActiveRectifier { StartMultiple = 2, WaitSeconds = 0, RampSeconds = 0.01 }, amperes),
        };
    }

    private static ModelLoad Model(
        ShopRandom random, double hertz, LoadEquations equations, double amperes, double load = 1) =>
        new ModelLoad(new LoadModel(equations, amperes, hertz, (long)(random.NextBits() >> 1)) { Load = load }, hertz);

    private static double Amperes(ShopRandom random)
    {
        LoadDraw draw = new(random);
        return random.NextDouble() < 1 / 3.0 ? draw.Between(Least, Small) : draw.Between(Small, Most);
    }
}
