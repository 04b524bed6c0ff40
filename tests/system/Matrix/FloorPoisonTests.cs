using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>What must not poison the noise floor or pull the midpoint.</summary>
[TestClass]
public sealed class FloorPoisonTests
{
    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Soft_starts_leave_the_floor()
    {
        ToolSpecification tool = ShortDay.Tool(ToolKind.SoftStart, 2);
        tool.SoftStartSeconds = 3;
        MatrixBench bench = Bench(tool, SensorKind.Transformer);
        int before = bench.Core.NoiseMilliamperes;
        for (int i = 0; i < 20; i++)
        {
            // A quarter of 2 A is below start-at: the climb is seen as noise until it crosses it.
            bench.Tool.Start(bench.Now);
            bench.Run(5);
            bench.Tool.Stop(bench.Now);
            bench.Run(3);
        }

        TestContext.WriteLine($"floor {before} mA before, {bench.Core.NoiseMilliamperes} mA after 20 soft starts");
        Assert.IsLessThan(1.3 * before, bench.Core.NoiseMilliamperes);
        Assert.IsFalse(bench.Core.Faults[Fault.Noisy].IsActive);
    }

    [TestMethod]
    [DataRow(ToolKind.Induction)]
    [DataRow(ToolKind.HalfWave)]
    [DataRow(ToolKind.Rectified)]
    public void A_boot_with_the_tool_running_leaves_floor_and_midpoint(ToolKind kind)
    {
        MatrixBench bench = Bench(ShortDay.Tool(kind, 3), SensorKind.Hall);
        bench.Run(60);
        int floor = bench.Core.NoiseMilliamperes;
        int midpoint = bench.Core.MidpointMillivolts;
        bench.Tool.Start(bench.Now);
        bench.Run(1);
        bench.Rig.PowerCycle();
        Assert.IsLessThan(0.1, bench.RunUntil(() => bench.Core.IsToolRunning, 1), "found at once after the boot");
        Assert.AreEqual(double.PositiveInfinity, bench.RunUntil(() => !bench.Core.IsToolRunning, 120), "dropped");
        bench.Tool.Stop(bench.Now);
        Assert.IsLessThan(0.1, bench.RunUntil(() => !bench.Core.IsToolRunning, 1), "released");
        bench.Run(3);

        TestContext.WriteLine($"{kind}: floor {floor} and {bench.Core.NoiseMilliamperes} mA, midpoint {midpoint} and "
            + $"{bench.Core.MidpointMillivolts} mV");
        Assert.IsLessThan(1.3 * floor, bench.Core.NoiseMilliamperes);
        Assert.AreEqual(midpoint, bench.Core.MidpointMillivolts, 3.0);
    }

    [TestMethod]
    public void A_half_wave_tool_does_not_pull_the_midpoint()
    {
        MatrixBench bench = Bench(ShortDay.Tool(ToolKind.HalfWave, 5), SensorKind.Hall);
        bench.Run(10);
        int before = bench.Core.MidpointMillivolts;
        int worst = 0;
        bench.Tool.Start(bench.Now);
        bench.RunUntil(() => { worst = Math.Max(worst, Math.Abs(bench.Core.MidpointMillivolts - before)); return false; }, 60);
        bench.Tool.Stop(bench.Now);
        bench.RunUntil(() => { worst = Math.Max(worst, Math.Abs(bench.Core.MidpointMillivolts - before)); return false; }, 5);

        // Its own mean is 2·rms/π, 3.2 A, which is 159 mV at 50 mV/A.
        TestContext.WriteLine($"midpoint {before} mV, pulled by {worst} mV at most");
        Assert.IsLessThan(3, worst);
    }

    [TestMethod]
    [DataRow(1.0)]
    [DataRow(1.2)]
    public void Hours_just_below_start_at_are_no_noise_and_gone_when_they_end(double creepsTo)
    {
        double hours = Environment.GetEnvironmentVariable("DUST_MATRIX") == "all" ? 4 : 0.5;
        Day day = new()
        {
            Tools =
            [
                ShortDay.Tool(ToolKind.Lamp, 0.5),
                new ToolSpecification { Name = "saw", Kind = ToolKind.Induction, RatedAmperes = 3 },
            ],
            Pace = Pace.Ideal(1000),
        };
        MatrixBench bench = new(day, 1);
        bench.Tool.Start(bench.Now);
        double seen = bench.RunUntil(() => bench.Core.IsRelayClosed, hours * 1800);

        // The level has gone up with it, so what creeps up further is no start either.
        bench.Tool.Load = creepsTo;
        seen = Math.Min(seen, bench.RunUntil(() => bench.Core.IsRelayClosed, hours * 1800));
        int floor = bench.Core.NoiseMilliamperes;
        int start = bench.Core.StartMilliamperes;
        string why = bench.Rig.Ask("why");
        TestContext.WriteLine(
            $"after {hours} h of 0.5 to {0.5 * creepsTo} A: floor {floor} mA, starts at {start} mA; "
                + $"{why.ReplaceLineEndings(" ")}");
        Assert.AreEqual(double.PositiveInfinity, seen);
        Assert.IsLessThan(200, floor);
        Assert.IsFalse(bench.Core.Faults[Fault.Noisy].IsActive, why);
        StringAssert.Contains(why, "stands on the line without a tool: a lamp or charger?", StringComparison.Ordinal);

        // A saw is still found, and a minute later nothing is left of it.
        bench.Shop.Wiring.Tools[1].Start(bench.Now);
        Assert.IsLessThan(0.1, bench.RunUntil(() => bench.Core.IsToolRunning, 1));
        bench.Shop.Wiring.Tools[1].Stop(bench.Now);
        bench.Tool.Stop(bench.Now);
        bench.Run(60);
        Assert.IsFalse(bench.Core.Faults[Fault.Noisy].IsActive);
        Assert.AreEqual(600, bench.Core.StartMilliamperes, 5.0);
    }

    private static MatrixBench Bench(ToolSpecification tool, SensorKind sensor)
    {
        Day day = new() { Tools = [tool], Pace = Pace.Ideal(1000) };
        day.Shop.Sensor = sensor;
        MatrixBench bench = new(day, 1);

        // Saved, so that a boot finds the sensor's gain.
        bench.Rig.Switch.Desk.RequestSave(bench.Rig.Switch.Now);
        bench.Run(30);
        return bench;
    }
}
