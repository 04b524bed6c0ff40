using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>A shop and a box in it, worked by a test.</summary>
internal sealed class MatrixBench
{
    private readonly Pace _pace;
    private readonly Random _random;
    private long _nextGap = long.MaxValue;

    /// <summary>Builds it, switches the box on and types the settings.</summary>
    /// <param name="day">The shop; its steps are not played.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="settings">Lines that are typed.</param>
    public MatrixBench(Day day, int seed, params string[] settings)
    {
        _pace = day.Pace;
        _random = new Random(seed);
        Shop = ShopBuilder.Build(day, seed);
        Clock = _pace.Clock(seed);
        Person nobody = new(new Day(), seed, Shop, []);
        Rig = new Rig(new PcBoard(new ShopLine(Shop, nobody), Clock, FlashImage.Blank(), _pace.Time(seed)));
        Run(2);
        Ask(day.Shop.Sensor == SensorKind.Hall ? "sensor-gain 50" : "sensor-gain 23.5");
        foreach (string line in settings)
        {
            Ask(line);
        }

        Run(2);
    }

    /// <summary>Gets the shop.</summary>
    public VirtualShop Shop { get; }

    /// <summary>Gets the box.</summary>
    public Rig Rig { get; }

    /// <summary>Gets the clock of the readings.</summary>
    public ReadingClock Clock { get; }

    /// <summary>Gets the core.</summary>
    public DetectionCore Core => Rig.Switch.Core;

    /// <summary>Gets the time, µs.</summary>
    public long Now => Rig.Board.ShopTime;

    /// <summary>Gets the first tool.</summary>
    public Tool Tool => Shop.Wiring.Tools[0];

    /// <summary>Gets or sets how often in a second the readings stop for 5 to 10 ms.</summary>
    public double GapsASecond { get; set; }

    /// <summary>Types a setting, which must be taken.</summary>
    /// <param name="line">The line.</param>
    public void Ask(string line)
    {
        string answer = Rig.Ask(line);
        StringAssert.Contains(answer, "saved", StringComparison.Ordinal);
    }

    /// <summary>Does a step.</summary>
    public void Step()
    {
        if (GapsASecond > 0 && Now >= _nextGap)
        {
            Clock.SkipTo(Now + (long)(5000 + (5000 * _random.NextDouble())));
        }

        if (GapsASecond > 0 && (Now >= _nextGap || _nextGap == long.MaxValue))
        {
            _nextGap = Now + (long)(2e6 / GapsASecond * _random.NextDouble());
        }

        Rig.Step();
    }

    /// <summary>Lets time pass.</summary>
    /// <param name="seconds">How long.</param>
    public void Run(double seconds)
    {
        long end = Now + (long)(seconds * 1e6);
        while (Now < end)
        {
            Step();
        }
    }

    /// <summary>Lets time pass until something is so.</summary>
    /// <param name="isSo">What.</param>
    /// <param name="seconds">How long at most.</param>
    /// <returns>The time it took, s; infinite where it did not come.</returns>
    public double RunUntil(Func<bool> isSo, double seconds)
    {
        long begin = Now;
        long end = begin + (long)(seconds * 1e6);
        while (Now < end)
        {
            Step();
            if (isSo())
            {
                return (Now - begin) * 1e-6;
            }
        }

        return double.PositiveInfinity;
    }
}
