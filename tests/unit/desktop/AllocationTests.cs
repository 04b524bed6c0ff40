using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// On the board a garbage collection stalls everything: while nobody types, the loop must allocate nothing at all.
[TestClass]
public class AllocationTests
{
    [TestMethod]
    [DataRow(0, DisplayName = "no tool")]
    [DataRow(3000, DisplayName = "a saw")]
    [DataRow(60000, DisplayName = "over range")]
    public void TheCoreAllocatesNothingPerBucket(int milliamperes)
    {
        CoreBench bench = new CoreBench(CoreBench.Settings());
        Cuts(bench, milliamperes);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Cuts(bench, milliamperes);
        Assert.AreEqual(0L, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [TestMethod]
    public void TheCoreAllocatesNothingWhenFaultsComeAndGo()
    {
        CoreBench bench = new CoreBench(CoreBench.Settings());
        Faults(bench);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Faults(bench);
        Assert.AreEqual(0L, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [TestMethod]
    [DataRow("", DisplayName = "nobody types")]
    [DataRow("watch\r", DisplayName = "while watch runs")]
    [DataRow("record\r", DisplayName = "while a recording runs")]
    public void TheSwitchAllocatesNothingPerStep(string typed)
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.Type(typed);
        bench.Run(1000);
        Assert.AreEqual(typed.Length > 0, !bench.Switch.Console.IsAtPrompt);
        Cuts(bench);

        // Flash is written once more after a minute, and the board under test makes an array for that.
        bench.Run(60000);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Cuts(bench);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.IsGreaterThan(1, bench.Switch.Hours.Starts);
        Assert.AreEqual(0L, allocated);
    }

    private static void Cuts(CoreBench bench, int milliamperes)
    {
        for (int i = 0; i < 3; i++)
        {
            bench.Run(milliamperes, 5000);
            bench.Run(0, 10000);
        }
    }

    private static void Faults(CoreBench bench)
    {
        bench.Stand(0, 3000);
        bench.Run(0, 12000);
        bench.Stand(-1, 500);
        bench.Gap(2000);
        bench.Run(0, 12000);
        bench.Core.Faults.Clear(bench.Now);
    }

    private static void Cuts(SwitchBench bench)
    {
        for (int i = 0; i < 3; i++)
        {
            bench.Tool(SwitchBench.Saw, 5000);
            bench.Tool(SwitchBench.NoTool, 10000);
        }
    }
}
