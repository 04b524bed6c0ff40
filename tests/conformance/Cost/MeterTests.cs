namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>The meter counts right. The numbers are explained beside what is counted, cost-bench/counted/Known.cs.</summary>
[TestClass]
[DoNotParallelize]
public class MeterTests
{
    private static readonly DeviceCode s_metered = new(isMetered: true);

    [TestMethod]
    [DataRow("Loop", 0, 10)]
    [DataRow("Loop", 1, 21)]
    [DataRow("Loop", 1000, 11010)]
    [DataRow("Branch", 5, 5)]
    [DataRow("Branch", 6, 5)]
    [DataRow("Chooses", 1, 4)]
    [DataRow("Chooses", 9, 5)]
    public void InstructionsAreCounted(string method, int argument, int instructions) =>
        Assert.AreEqual(new Counts { Instructions = instructions }, Run(method, argument));

    [TestMethod]
    public void ACallIsCounted() =>
        Assert.AreEqual(new Counts { Instructions = 5 + 5, Calls = 1 }, Run("Calls", 1));

    [TestMethod]
    [DataRow("CallsVirtually")]
    [DataRow("CallsThroughInterface")]
    public void ALookedUpCallIsCounted(string method) =>
        Assert.AreEqual(new Counts { Instructions = 3 + 2, VirtualCalls = 1 }, Run(method, 1));

    [TestMethod]
    [DataRow(5, 6 + 5, 0, 0)]
    [DataRow(6, 8 + 5, 1, 1)]
    public void WhatIsCaughtIsCounted(int argument, int instructions, int allocations, int libraryCalls) =>
        Assert.AreEqual(
            new Counts { Instructions = instructions, Calls = 1, Allocations = allocations, LibraryCalls = libraryCalls },
            Run("Catches", argument));

    [TestMethod]
    public void AnObjectIsCounted() =>
        Assert.AreEqual(
            new Counts { Instructions = 3 + 2 + 3 + 3, Calls = 2, VirtualCalls = 1, LibraryCalls = 1, Allocations = 1 },
            Run("MakesObject", 1));

    [TestMethod]
    [DataRow("MakesArray", 5)]
    [DataRow("Boxes", 5)]
    public void AnArrayAndABoxAreCounted(string method, int instructions) =>
        Assert.AreEqual(new Counts { Instructions = instructions, Allocations = 1 }, Run(method, 1));

    [TestMethod]
    public void ATextIsCounted() =>
        Assert.AreEqual(
            new Counts { Instructions = 6, NativeCalls = 2, LibraryCalls = 1, Allocations = 2, Literals = 1 },
            Run("MakesText", 1));

    [TestMethod]
    public void WhatAMethodCallsIsInItsWhole()
    {
        Run("Calls", 1);
        Assert.AreEqual((1, 5, 10), Method("Known.Calls"));
        Assert.AreEqual((1, 5, 5), Method("Known.Branch"));
    }

    [TestMethod]
    public void TheMeterChangesNoDecision()
    {
        int[] readings =
        [
            .. ToolWave.Quiet(500, 1),
            .. ToolWave.Tool(3, 500, 2),
            .. ToolWave.Quiet(500, 6),
            .. ToolWave.Tool(60, 500, 1),
            .. new int[1000],
            .. ToolWave.Quiet(500, 12),
        ];
        var metered = s_metered.Bench<Func<int[], int, long[]>>("CoreRun", "Decide");
        var plain = new DeviceCode(isMetered: false).Bench<Func<int[], int, long[]>>("CoreRun", "Decide");
        Meter.Begin(s_metered.Methods);
        var expected = plain(readings, 5);
        Assert.AreEqual(default, Meter.Total);
        CollectionAssert.AreEqual(expected, metered(readings, 5));
        Assert.IsGreaterThan(0, Meter.Total.Instructions);
        Assert.HasCount(expected.Length, expected.Distinct());
    }

    private static (int Calls, int Own, int Whole) Method(string name)
    {
        var method = Meter.Method(name);
        return (method.Calls, method.Own, method.Whole.Instructions);
    }

    private static Counts Run(string method, int argument)
    {
        var run = s_metered.Bench<Func<int, int>>("Counted.Known", method);

        // The first time also makes the objects of static fields.
        Meter.Begin(s_metered.Methods);
        run(argument);
        Meter.Begin(s_metered.Methods);
        run(argument);
        return Meter.Total;
    }
}
