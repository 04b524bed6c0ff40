using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// A shop drawn at random: mains, sensor, noise, tools, and ten minutes of mixed use of those that could be taught.
/// </summary>
internal sealed class RandomShop
{
    private const int ToolCount = 4;
    private const int StartStream = 11;
    private const double Minutes = 10;
    private const double LeastWatts = 60;

    // A motor of 2 hp draws 24 A at 115 V (NEC Table 430.248).
    private const double MostWatts = 24 * 115;

    private readonly Random _random;

    /// <summary>Draws a shop.</summary>
    /// <param name="seed">The seed.</param>
    public RandomShop(int seed)
    {
        _random = new Random(seed);
        Seed = seed;
        double volts = Pick(100.0, 120, 127, 220, 230, 240);
        Day = new Day
        {
            Name = $"random shop {seed}",
            NoiseAmperes = Between(0.05, 0.2),
            HumAmperes = Between(0, 0.05),
            Pace = _random.Next(2) == 0 ? Pace.Ideal(2000) : Pace.Esp32(),
        };
        Day.Shop.Volts = volts;
        Day.Shop.Hertz = Pick(50.0, 60) * Between(0.99, 1.01);
        Day.Shop.DegreesAtZero = Between(0, 360);
        Day.Shop.Sensor = _random.Next(2) == 0 ? SensorKind.Transformer : SensorKind.Hall;

        // Breakers have tests of their own; here none shall cut a tool's run short.
        Day.Shop.Circuits = [new CircuitSpecification { Name = "all", Amperes = 500 }];
        Day.Tools = [.. Enumerable.Range(0, ToolCount).Select(i => DrawTool(i, volts))];
    }

    /// <summary>Gets the seed.</summary>
    public int Seed { get; }

    /// <summary>Gets the shop; its steps are drawn once it is known which tools could be taught.</summary>
    public Day Day { get; }

    /// <summary>Gets the line that a person types first: the sensor's gain by its data sheet.</summary>
    public string Gain => Day.Shop.Sensor == SensorKind.Hall ? "sensor-gain 50" : "sensor-gain 23.5";

    /// <inheritdoc/>
    public override string ToString() =>
        $"shop {Seed}: {Day.Shop.Volts} V, {Day.Shop.Hertz:0.00} Hz, {Day.Shop.Sensor}, noise {Day.NoiseAmperes:0.00} A, "
        + $"hum {Day.HumAmperes:0.00} A, "
        + $"{(Day.Pace.Costs is null ? "ideal" : "ESP32")} pace; "
        + string.Join(", ", Day.Tools.Select(tool => $"{tool.Kind} {tool.RatedAmperes:0.00} A"));

    /// <summary>Draws ten minutes of use.</summary>
    /// <param name="names">The tools that may be used.</param>
    public void DrawUse(IReadOnlyList<string> names)
    {
        List<DayStep> steps = [];
        double end = (Minutes * 60) - 60;
        double at = Between(1, 10);
        while (names.Count > 0 && at < end)
        {
            string name = names[_random.Next(names.Count)];
            double stop = at + Between(2, 30);
            steps.Add(Step(at - 0.3, DayAct.Load, name, Between(0.7, 1.3)));
            steps.Add(Step(at, DayAct.Start, name));
            steps.Add(Step(stop, DayAct.Stop, name));
            string other = names[_random.Next(names.Count)];
            if (other != name && _random.Next(4) == 0)
            {
                steps.Add(Step(at + 1, DayAct.Start, other));
                stop += Between(0.5, 5);
                steps.Add(Step(stop, DayAct.Stop, other));
            }

            at = stop + (_random.Next(2) == 0 ? Between(1, 5) : Between(5.5, 25));
        }

        Day.Seconds = Minutes * 60;
        Day.Steps = [.. steps.OrderBy(step => step.At)];
    }

    private static DayStep Step(double seconds, DayAct act, string tool, double value = 0) =>
        new((long)(seconds * 1e6), act, tool, value);

    private ToolSpecification DrawTool(int index, double volts)
    {
        double watts = LeastWatts * Math.Pow(MostWatts / LeastWatts, _random.NextDouble());
        ToolKind kind = (ToolKind)_random.Next(Enum.GetValues<ToolKind>().Length);
        ToolSpecification tool = new()
        {
            Name = $"tool {index} ({kind})",
            Kind = kind,
            RatedAmperes = watts / volts,
            StandbyAmperes = index == 0 ? Between(0, 0.06) : 0,
            CoastSeconds = Between(0, 40),
            ConductionFraction = Between(0.3, 1),
            SoftStartSeconds = Between(0.3, 1.5),
        };
        new LoadDraw(new ShopRandom(Seed, StartStream + index)).Start(tool);
        return tool;
    }

    private double Between(double least, double greatest) => least + (_random.NextDouble() * (greatest - least));

    private double Pick(params double[] values) => values[_random.Next(values.Length)];
}
