using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// What the core makes of the vacuum's own current: on a line with a sensor of its own, or, wrongly wired, on the tool's.
[TestClass]
public class VacuumInTheCoreTests
{
    private const int Idle = 0;
    private const int Tool = 3000;

    // The tool has stopped, the vacuum's current keeps it on; then three looks.
    [TestMethod]
    public void AVacuumThatFeedsTheSensedLineIsFoundAndKeptOff()
    {
        CoreBench bench = CoreBench.Ready();
        bench.RunWithVacuum(12000, 8000, 3000);
        bench.RunWithVacuum(Idle, 8000, 3500);
        Assert.IsTrue(bench.Core.IsRelayClosed);
        Assert.AreEqual(0, bench.Noticed[(int)NoticeKind.Probed]);

        for (int i = 0; i < 16 && !bench.Core.IsProbing; i++)
        {
            bench.RunWithVacuum(Idle, 8000, 100);
        }

        Assert.IsTrue(bench.Core.IsProbing);
        Assert.IsFalse(bench.Core.IsRelayClosed);
        Assert.IsTrue(bench.Core.Vacuum.WantsVacuum);
        bench.RunWithVacuum(Idle, 8000, 8000);
        Assert.IsTrue(bench.Core.Faults[Fault.OwnCurrent].IsLatched);
        Assert.AreEqual(3, bench.Noticed[(int)NoticeKind.Probed]);
        Near.Check(8000, bench.Core.Faults[Fault.OwnCurrent].Figure, 500);
        Assert.IsFalse(bench.Core.IsRelayClosed);
        Assert.IsFalse(bench.Core.IsProbing);
    }

    // Cutting begins as the relay closes, and the tool is seen to stop with the relay closed.
    [TestMethod]
    public void AToolThatIsSeenToStopIsNotProbed()
    {
        CoreBench bench = CoreBench.Ready();
        for (int i = 0; i < 4; i++)
        {
            Assert.IsTrue(bench.RunUntilRelay(true, 1000, 1000));
            bench.Run(8000, 3000);
            Assert.IsFalse(bench.Core.IsProbing);
            bench.Run(Idle, 8000);
        }

        Assert.AreEqual(0, bench.Noticed[(int)NoticeKind.Probed]);
    }

    // With the relay open, or told to close a moment ago, the vacuum's current cannot have kept a tool from being seen to stop.
    [TestMethod]
    public void AStopWithTheRelayOpenSaysNothing()
    {
        CoreBench bench = CoreBench.Ready();
        Assert.IsTrue(bench.RunUntilRelay(true, 1000, 1000));
        bench.Run(8000, 500);
        bench.Do(VacuumEvent.HandOff);
        bench.Run(8000, 2000);
        bench.Run(Idle, 2000);
        Assert.IsTrue(bench.RunUntilRelay(true, 1000, 1000));
        bench.Run(8000, 1490);
        bench.Run(3000, 3500);
        Assert.IsFalse(bench.Core.IsProbing);
        bench.Run(3000, 1400);
        Assert.AreEqual(1, bench.Noticed[(int)NoticeKind.Probed] + (bench.Core.IsProbing ? 1 : 0));
    }

    // With the relay open there is nothing to probe.
    [TestMethod]
    public void AnOpenRelayEndsTheSuspicion()
    {
        CoreBench bench = new CoreBench(CoreBench.Settings());
        bench.Run(1000, 1000);
        for (int i = 0; i < 2; i++)
        {
            bench.Do(VacuumEvent.HandOff);
            bench.Run(1000, 1000);
            bench.Do(VacuumEvent.HandOn);
            Assert.IsTrue(bench.Core.IsRelayClosed);
            bench.Run(8000, 1000);
        }

        bench.Do(VacuumEvent.HandOff);
        for (int i = 0; i < 500; i++)
        {
            bench.Run(8000, 5);
            Assert.IsFalse(bench.Core.IsProbing);
        }
    }

    // 10 A of a sine are 412 counts of peak at the default sensor: 10 × 23.5 mV × √2 / 0.806 mV.
    [TestMethod]
    public void TheVacuumsOwnLineSaysWhetherItRuns()
    {
        CoreBench bench = WithVacuumSensor();
        Assert.AreEqual(-1, bench.Core.VacuumMilliamperes);
        bench.VacuumPeak = 0;
        bench.Run(Idle, 1000);
        Assert.AreEqual(0, bench.Core.VacuumMilliamperes);
        bench.VacuumPeak = 412;
        bench.Run(Tool, 400);
        Assert.IsTrue(bench.Core.IsRelayClosed);
        Assert.IsFalse(bench.Core.IsVacuumRunning);
        bench.Run(Tool, 600);
        Assert.IsTrue(bench.Core.IsVacuumRunning);
        Near.Check(10000, bench.Core.VacuumMilliamperes, 50);
        bench.VacuumPeak = 0;
        bench.Run(Tool, 2000);
        Assert.IsFalse(bench.Core.IsVacuumRunning);
        Assert.IsTrue(bench.IsFaulted(Fault.VacuumIdle));

        // Without its sensor the relay is all that is known, and the fault is over.
        CoreSettings with = WithVacuumSensorSettings();
        CoreSettings without = CoreBench.Settings();
        bench.Core.Use(without);
        Assert.IsFalse(bench.IsFaulted(Fault.VacuumIdle));
        Assert.AreEqual(-1, bench.Core.VacuumMilliamperes);
        Assert.IsTrue(bench.Core.IsVacuumRunning);

        // Fitted again, nothing of before is known.
        bench.Core.Use(with);
        bench.VacuumPeak = 412;
        bench.Run(Tool, 1000);
        Assert.IsTrue(bench.Core.IsVacuumRunning);
        bench.Core.Use(without);
        bench.Core.Use(with);
        bench.VacuumPeak = 0;
        bench.Run(Tool, 60);
        Assert.AreEqual(0, bench.Core.VacuumMilliamperes);
        Assert.IsFalse(bench.Core.IsVacuumRunning);
    }

    [TestMethod]
    public void AVacuumThatRunsOnWithTheRelayOpenIsAFault()
    {
        CoreBench bench = WithVacuumSensor();
        bench.VacuumPeak = 0;
        bench.Run(Idle, 1000);
        bench.VacuumPeak = 412;
        bench.Run(Tool, 3000);
        Assert.IsFalse(bench.Core.Faults.HoldsOff);
        bench.Do(VacuumEvent.HandOff);
        bench.Run(Tool, 1900);
        Assert.IsFalse(bench.Core.Faults.HoldsOff);
        bench.Run(Tool, 200);
        Assert.IsTrue(bench.Core.Faults[Fault.VacuumStays].IsLatched);
    }

    private static CoreBench WithVacuumSensor()
    {
        return new CoreBench(WithVacuumSensorSettings());
    }

    private static CoreSettings WithVacuumSensorSettings()
    {
        return CoreBench.Settings(vacuumTurns: 1);
    }
}
