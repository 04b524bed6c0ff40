using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>
/// All that spoils readings at once: drop-outs to 0 and full scale once in 600 (seen so in an open recording), 1,000 readings a
/// second with 60 % jitter, and two gaps of 5 to 10 ms a second (common practice, no source). How long a swing then takes to be
/// found is measured in tests/references.
/// </summary>
[TestClass]
public sealed class DirtyReadingsTests
{
    private const double IdleSeconds = 600;
    private const double RunSeconds = 60;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(SensorKind.Transformer, 60.0)]
    [DataRow(SensorKind.Hall, 50.0)]
    public void They_start_nothing(SensorKind sensor, double hertz)
    {
        MatrixBench bench = Bench(ToolKind.Rectified, 2.4, sensor, hertz, 1);
        double seen = bench.RunUntil(() => bench.Core.IsToolRunning || bench.Core.IsRelayClosed, IdleSeconds);
        TestContext.WriteLine(
            $"{IdleSeconds} s, nothing seen: {double.IsInfinity(seen)}, noise {bench.Core.NoiseMilliamperes} mA");
        Assert.AreEqual(double.PositiveInfinity, seen);
    }

    [TestMethod]
    [DataRow(ToolKind.Induction, 1.0)]
    [DataRow(ToolKind.Universal, 6.0)]
    [DataRow(ToolKind.PhaseChopped, 2.0)]
    [DataRow(ToolKind.HalfWave, 2.0)]
    [DataRow(ToolKind.Rectified, 2.4)]
    [DataRow(ToolKind.Rectified, 1.4)]
    [DataRow(ToolKind.Charger, 2.0)]
    public void They_drop_no_tool_that_runs(ToolKind kind, double amperes)
    {
        foreach (SensorKind sensor in Enum.GetValues<SensorKind>())
        {
            foreach (double hertz in new[] { 50.0, 60.0 })
            {
                MatrixBench bench = Bench(kind, amperes, sensor, hertz, 2);
                bench.Tool.Start(bench.Now);
                Assert.IsLessThan(0.1, bench.RunUntil(() => bench.Core.IsToolRunning, 1), $"{sensor} {hertz} Hz");
                double dropped = bench.RunUntil(() => !bench.Core.IsToolRunning, RunSeconds);
                Assert.AreEqual(double.PositiveInfinity, dropped, $"{sensor} {hertz} Hz: dropped after {dropped:0.00} s");
                bench.Tool.Stop(bench.Now);
                Assert.IsLessThan(0.3, bench.RunUntil(() => !bench.Core.IsToolRunning, 1), $"{sensor} {hertz} Hz");
            }
        }
    }

    private static MatrixBench Bench(ToolKind kind, double amperes, SensorKind sensor, double hertz, int seed)
    {
        Day day = new() { Tools = [ShortDay.Tool(kind, amperes)], Pace = new Pace(1000, 0.6), DropOutProbability = 1.0 / 600 };
        day.Shop.Sensor = sensor;
        day.Shop.Hertz = hertz;
        return new MatrixBench(day, seed, "stop-below 0.18", "start-at 0.3") { GapsASecond = 2 };
    }
}
