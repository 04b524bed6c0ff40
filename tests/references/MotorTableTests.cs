using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>Full-load currents of single-phase motors, 115 and 230 V: NEC (NFPA 70) Table 430.248.</summary>
[TestClass]
public sealed class MotorTableTests
{
    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(115, 9.8, 13.8, 16.0, 20.0, 24.0, 34.0, 56.0)]
    [DataRow(230, 4.9, 6.9, 8.0, 10.0, 12.0, 17.0, 28.0)]
    public void Every_motor_of_the_table_is_seen_as_running(int volts, params double[] amperes)
    {
        foreach (double current in amperes)
        {
            Day day = new()
            {
                Seconds = 12,
                Tools = [new ToolSpecification { Name = "motor", Kind = ToolKind.Induction, RatedAmperes = current }],
                Settings = volts == 230 ? ["stop-below 0.25", "start-at 0.4"] : [],
                Steps = [new DayStep(1_000_000, DayAct.Start, "motor"), new DayStep(6_000_000, DayAct.Stop, "motor")],
            };
            day.Shop.Volts = volts;
            day.Shop.Hertz = volts == 230 ? 50 : 60;

            // The table is about the current; no breaker of the shop shall cut it short.
            day.Shop.Circuits = [new CircuitSpecification { Amperes = 200 }];
            DayRun run = new DayRun(day, 1, isTraced: false).Run();
            TestContext.WriteLine($"{current} A at {volts} V: vacuum after {run.Judge.Delays.FirstOrDefault():0} ms");
            Assert.AreEqual(1, run.Judge.Starts, $"{current} A at {volts} V");
            Assert.AreEqual(0, run.Judge.Missed + run.Judge.False, $"{current} A at {volts} V");
        }
    }
}
