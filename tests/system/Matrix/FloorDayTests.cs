using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using ScottPlot;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>
/// Midpoint and noise floor over a day of temperature and supply, against the truth: an hour that stands for a day, or the whole
/// day with DUST_MATRIX=all. The errors go as a chart to out/floor-day.png. How far they drift is common practice, no source.
/// </summary>
[TestClass]
public sealed class FloorDayTests
{
    private const double DayHours = 24;
    private const double DaySeconds = DayHours * 3600;

    // A supply of 3.3 V that is 3 % off moves a rest of 1270 mV by 38 mV; a cold morning and a warm day by 20 mV.
    private const double SupplyMillivolts = 38;
    private const double TemperatureMillivolts = 20;

    // Thermal noise grows little; what else is switched on in the house makes the rest.
    private const double LeastNoise = 0.08;
    private const double MostNoise = 0.18;

    private const double MidpointError = 8;
    private const double FloorError = 0.35;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Midpoint_and_floor_follow_the_day()
    {
        double hours = Environment.GetEnvironmentVariable("DUST_MATRIX") == "all" ? DayHours : 1;
        ToolSpecification tool = ShortDay.Tool(ToolKind.HalfWave, 3);
        Day day = new() { Tools = [tool], Pace = Pace.Ideal(1000) };
        day.Shop.Sensor = SensorKind.Hall;
        MatrixBench bench = new(day, 1);
        int offset = Offset(bench);
        List<Coordinates> midpoint = [];
        List<Coordinates> floor = [];
        List<Coordinates> truth = [];
        double smooth = bench.Core.NoiseMilliamperes;
        double worstMidpoint = 0;
        double worstFloor = 0;
        long begin = bench.Now;
        for (int second = 1; second < hours * 3600; second++)
        {
            double turn = (bench.Now - begin) * 1e-6 / (hours * 3600);
            Drift(bench.Shop.Sensor, turn);
            bool isIn = second % 120 > 100;
            if (isIn != bench.Tool.IsSwitchedOn)
            {
                (isIn ? (Action<long>)bench.Tool.Start : bench.Tool.Stop)(bench.Now);
            }

            int greatest = 0;
            bench.RunUntil(() => { greatest = Math.Max(greatest, bench.Core.SwingMilliamperes); return false; }, 1);
            double error = bench.Core.MidpointMillivolts - offset - bench.Shop.Sensor.RestMillivolts;
            midpoint.Add(new Coordinates(turn * DaySeconds, error));
            worstMidpoint = Math.Max(worstMidpoint, Math.Abs(error));
            if (!isIn && second % 120 > 5)
            {
                // The truth: what the seconds show, over a minute or so, as the floor rises only by a thirty-second of the
                // difference.
                smooth += (greatest - smooth) / 32;
                floor.Add(new Coordinates(turn * DaySeconds, bench.Core.NoiseMilliamperes));
                truth.Add(new Coordinates(turn * DaySeconds, smooth));
                worstFloor = Math.Max(worstFloor, Math.Abs(bench.Core.NoiseMilliamperes - smooth) / smooth);
            }
        }

        TestContext.WriteLine($"{hours} h: midpoint within {worstMidpoint:0.0} mV of the truth, floor within "
            + $"{worstFloor * 100:0} % of what a second shows");
        Save([.. midpoint], [.. floor], [.. truth]);
        Assert.IsLessThan(MidpointError, worstMidpoint);
        Assert.IsLessThan(FloorError, worstFloor);
        Assert.IsFalse(bench.Core.Faults.HoldsOff);
    }

    private static void Drift(CurrentSensor sensor, double turn)
    {
        double temperature = Math.Sin(2 * Math.PI * turn);

        // A loaded supply sags while the compressor next door runs: slow sags and quick ones.
        double supply = 0.5 * (Math.Sin(2 * Math.PI * 3 * turn) + Math.Sin(2 * Math.PI * 5 * turn));
        sensor.RestMillivolts = 1250 + (TemperatureMillivolts * temperature) + (SupplyMillivolts * supply);
        sensor.NoiseAmperes = LeastNoise + ((MostNoise - LeastNoise) * (0.5 - (0.5 * Math.Cos(2 * Math.PI * 2 * turn))));
    }

    // What the bow of the converter makes of the rest, mV.
    private static int Offset(MatrixBench bench) => bench.Core.MidpointMillivolts - (int)bench.Shop.Sensor.RestMillivolts;

    private static void Save(Coordinates[] midpoint, Coordinates[] floor, Coordinates[] truth)
    {
        Plot above = ChartStyle.Panel("midpoint less truth, mV", 45, 12);
        ChartStyle.AddLine(above, midpoint, ChartStyle.Blue, "midpoint", LinePattern.Solid);
        above.Title(
            "A day of drift: 76 mV of supply, 40 mV of temperature, noise of 0.08 to 0.18 A, a half-wave tool on and off",
            ChartStyle.FontSize + 4);
        Plot below = ChartStyle.Panel("noise, mA", 12, 70);
        ChartStyle.AddLine(below, truth, ChartStyle.Grey, "seen in a second", LinePattern.Solid);
        ChartStyle.AddLine(below, floor, ChartStyle.Vermilion, "floor", LinePattern.Solid);
        ChartStyle.SetTime(above, 0, DaySeconds, false);
        ChartStyle.SetTime(below, 0, DaySeconds, true);
        Directory.CreateDirectory(Repository.PathOf("out"));
        ChartFile.SavePng(Repository.PathOf("out/floor-day.png"), [above, below], [330, 370]);
    }
}
