using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>
/// Full-load currents of single-phase motors, whole and at a tenth of them as the margin (NEC (NFPA 70) Table 430.248, read):
/// found, and told from the idle line. Locked-rotor codes (NEC Table 430.7(B), read) give the peak of the model's start.
/// </summary>
[TestClass]
public sealed class MotorMarginTests
{
    private const double IdleSeconds = 20;
    private const double RunSeconds = 2;
    private const double UsualInrush = 6;

    private static readonly double[] s_horsepower = [0.5, 0.75, 1, 1.5, 2, 3, 5];
    private static readonly double[] s_at115 = [9.8, 13.8, 16, 20, 24, 34, 56];

    // Locked-rotor kVA a horsepower, the ends of each code letter.
    private static readonly (char Letter, double From, double To)[] s_codes =
        [('G', 5.6, 6.29), ('H', 6.3, 7.09), ('J', 7.1, 7.99), ('K', 8.0, 8.99), ('L', 9.0, 9.99), ('M', 10.0, 11.19)];

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(115, 60.0)]
    [DataRow(230, 50.0)]
    public void Every_motor_is_found_and_told_from_idle_whole_and_at_a_tenth(int volts, double hertz)
    {
        foreach (double whole in s_at115.Select(amperes => amperes * 115 / volts))
        {
            foreach (double amperes in new[] { whole, whole / 10 })
            {
                VirtualShop shop = Shop(amperes, UsualInrush, hertz, volts, out Rig rig);
                int idle = 0;
                Run(
                    rig,
                    IdleSeconds,
                    () => idle = Math.Max(idle, rig.Switch.Core.SwingMilliamperes),
                    () => Assert.IsFalse(rig.Switch.Core.IsToolRunning));
                shop.Wiring.Tools[0].Start(rig.Board.ShopTime);
                Run(rig, 0.1, () => { }, () => { });
                Assert.IsTrue(rig.Switch.Core.IsToolRunning, $"{amperes} A at {volts} V is not found");
                int least = int.MaxValue;
                Run(
                    rig,
                    RunSeconds,
                    () => least = Math.Min(least, rig.Switch.Core.SwingMilliamperes),
                    () => Assert.IsTrue(rig.Switch.Core.IsToolRunning, $"{amperes} A at {volts} V is dropped"));
                TestContext.WriteLine(
                    $"{amperes:0.00} A at {volts} V: idle {idle} mA at most, running {least} mA at least, "
                    + $"{(double)least / idle:0.0} times");

                // Teach asks for twice.
                Assert.IsGreaterThan(2 * idle, least, $"{amperes} A at {volts} V");
            }
        }
    }

    [TestMethod]
    public void A_locked_rotor_code_gives_the_peak_of_the_models_start()
    {
        double least = double.PositiveInfinity;
        double most = 0;
        for (int i = 0; i < s_horsepower.Length; i++)
        {
            foreach ((char letter, double from, double to) in s_codes)
            {
                double locked = 0.5 * (from + to) * 1000 * s_horsepower[i] / 115;
                double multiple = locked / s_at115[i];
                least = Math.Min(least, multiple);
                most = Math.Max(most, multiple);
                VirtualShop shop = Shop(s_at115[i], multiple, 60, 115, out Rig rig);
                long start = rig.Board.ShopTime;
                shop.Wiring.Tools[0].Start(start);
                Run(rig, 0.1, () => { }, () => { });

                // In the middle of the run-up, its direct-current offset gone by.
                double plateau = shop.ToolLine.Rms;
                Assert.IsInRange(0.9 * locked, 1.2 * locked, plateau, $"{s_horsepower[i]} hp, code {letter}");
            }
        }

        double model = ToolDefaults.Of(ToolKind.Induction).InrushMultiple;
        TestContext.WriteLine(
            $"locked rotor of codes G to M, 1/2 to 5 hp: {least:0.0} to {most:0.0} times the full-load current; "
            + $"the model's induction motor starts at {model:0.0}");
        Assert.IsInRange(least, most, model);
    }

    private static void Run(Rig rig, double seconds, Action look, Action check)
    {
        long end = rig.Board.ShopTime + (long)(seconds * 1e6);
        while (rig.Board.ShopTime < end)
        {
            rig.Step();
            look();
            check();
        }
    }

    private static VirtualShop Shop(double amperes, double inrush, double hertz, int volts, out Rig rig)
    {
        ToolSpecification tool = new()
        {
            Name = "motor",
            Kind = ToolKind.Induction,
            RatedAmperes = amperes,
            InrushMultiple = inrush,
        };
        Day day = new() { Tools = [tool] };
        day.Shop.Hertz = hertz;
        day.Shop.Volts = volts;
        day.Shop.SourceOhms = 0;

        // The tables are about the current; no breaker of the shop shall cut it short.
        day.Shop.Circuits = [new CircuitSpecification { Amperes = 500 }];
        VirtualShop shop = ShopBuilder.Build(day, 1);
        rig = new Rig(
            new PcBoard(new ShopLine(shop, new Person(new Day(), 1, shop, [])), day.Pace.Clock(1), FlashImage.Blank(), null));
        rig.RunUntil(2_000_000);
        if (volts == 230)
        {
            rig.Ask("stop-below 0.25");
            rig.Ask("start-at 0.4");
        }

        return shop;
    }
}
