using MathNet.Numerics;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>
/// How long a swing takes to be found in readings with everything wrong at once, against the best that any detector could do with
/// as many good readings: a sine of known frequency and unknown phase in white noise, 90 % and one false start a year (χ² of two
/// degrees of freedom, Marcum Q; Kay, Detection Theory, from memory). No measure of an alternating quantity is shorter than one
/// cycle (IEC 61000-4-30, from memory), so neither is the bound.
/// </summary>
[TestClass]
public sealed class DirtyTimeTests
{
    private const double Year = 365.25 * 24 * 3600;
    private const double Wanted = 0.9;
    private const double Noise = 0.13;
    private const double Rate = 1000;
    private const double DropOut = 1.0 / 600;
    private const double MostOverBound = 2.2;
    private const double GapsASecond = 2;
    private const int Starts = 1000;

    public TestContext TestContext { get; set; } = null!;

    // At 0.25 A and 50 Hz it is 2.15 times, at 0.3 A and 60 Hz 2.06: levels a twentieth lower would make it 1.99 and 1.96, and
    // 1/f noise would start the vacuum five times a year (benchmark), where once is allowed. Below that the slow lane takes half
    // a second.
    [TestMethod]
    [DataRow(0.25, 50.0)]
    [DataRow(0.3, 50.0)]
    [DataRow(0.3, 60.0)]
    [DataRow(0.5, 50.0)]
    [DataRow(0.5, 60.0)]
    [DataRow(1.0, 50.0)]
    [DataRow(1.0, 60.0)]
    [DataRow(5.0, 60.0)]
    public void A_swing_is_found_in_twice_the_bounds_time(double amperes, double hertz)
    {
        double best = BestSeconds(amperes);
        double bound = Math.Max(best, 1 / hertz);
        double[] times = [.. Times(amperes, hertz).Order()];
        double nine = times[(int)(Wanted * Starts)];
        TestContext.WriteLine(
            $"{amperes} A, {hertz} Hz: bound {best * 1e3:0.0} ms, at least a cycle {bound * 1e3:0.0} ms; "
            + $"90 % found in {nine * 1e3:0.0} ms, {nine / bound:0.00} times");
        Assert.IsLessThanOrEqualTo(MostOverBound, nine / bound);
    }

    // The time in which the best detector finds it: as many windows one after the other make up the year.
    private static double BestSeconds(double amperes)
    {
        double ratio = amperes * Math.Sqrt(2) / Noise;
        double Chance(double seconds)
        {
            double readings = Rate * (1 - DropOut) * seconds;
            return SpecialFunctions.MarcumQ(1, readings * ratio * ratio / 4, -Math.Log(seconds / Year));
        }

        double seconds = 0.0001;
        while (Chance(seconds) < Wanted)
        {
            seconds *= 1.01;
        }

        return seconds;
    }

    private static double[] Times(double amperes, double hertz)
    {
        ToolSpecification tool = new()
        {
            Name = "tool",
            Kind = ToolKind.Lamp,
            RatedAmperes = amperes,
            InrushMultiple = 1,
            CoastSeconds = 0,
        };
        Day day = new() { Tools = [tool], NoiseAmperes = Noise, DropOutProbability = DropOut, Pace = new Pace(Rate, 0.6) };
        day.Shop.Hertz = hertz;
        day.Shop.VacuumAmperes = 1;
        day.Shop.Circuits = [new CircuitSpecification { Amperes = 500 }];
        VirtualShop shop = ShopBuilder.Build(day, 1);
        ReadingClock clock = day.Pace.Clock(1);
        Rig rig = new(new PcBoard(new ShopLine(shop, new Person(new Day(), 1, shop, [])), clock, FlashImage.Blank(), null));
        rig.RunUntil(2_000_000);

        // Half the current, as the benchmark's tables have it.
        rig.Ask("stop-below 0.02");
        rig.Ask($"start-at {amperes / 2} A");
        rig.Ask($"stop-below {amperes * 0.3} A");
        rig.RunUntil(30_000_000);
        Random random = new(1);
        double[] times = new double[Starts];
        long nextGap = rig.Board.ShopTime;
        void Step()
        {
            if (rig.Board.ShopTime >= nextGap)
            {
                clock.SkipTo(rig.Board.ShopTime + (long)(5000 + (5000 * random.NextDouble())));
                nextGap = rig.Board.ShopTime + (long)(2e6 / GapsASecond * random.NextDouble());
            }

            rig.Step();
        }

        for (int i = 0; i < Starts; i++)
        {
            long start = rig.Board.ShopTime + 300_000 + random.Next(100_000);
            while (rig.Board.ShopTime < start)
            {
                Step();
            }

            // Exact to the microsecond, between two looks.
            long onset = rig.Board.ShopTime + random.Next(2500);
            shop.Wiring.Tools[0].Start(onset);
            while (!rig.Switch.Core.IsToolRunning && rig.Board.ShopTime < onset + 2_000_000)
            {
                Step();
            }

            times[i] = (rig.Board.ShopTime - onset) * 1e-6;
            shop.Wiring.Tools[0].Stop(rig.Board.ShopTime);
        }

        return times;
    }
}
