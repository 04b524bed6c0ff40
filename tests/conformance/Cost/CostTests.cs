namespace NanoDustSwitch.ConformanceTests.Cost;

[TestClass]
[DoNotParallelize]
public class CostTests
{
    private static readonly DeviceCode s_code = new(isMetered: true);

    private static readonly Lazy<StepCosts[]> s_all = new(() =>
        [
            Stretches.Quiet(s_code, 2000),
            Stretches.Running(s_code, 2000),
            Stretches.Cuts(s_code, 2000),
            Stretches.Clipped(s_code, 2000),
            Stretches.SensorOff(s_code, 2000),
        ]);

    public TestContext TestContext { get; set; } = null!;

    // Shown by: dotnet test tests/conformance --filter CostTests --logger "console;verbosity=detailed"
    [TestMethod]
    public void TheReport() => TestContext.WriteLine(new CostReport(s_code).ToString());

    [TestMethod]
    public void AReadingIsCheap()
    {
        var cost = new ReadingCost(s_code);
        Assert.IsLessThanOrEqualTo(CostLimits.Reading, cost.Rising + CostLimits.Adapter);
    }

    [TestMethod]
    [DataRow(1000)]
    [DataRow(2000)]
    public void TheCloseOfABucketIsCheap(int readingsASecond)
    {
        var readings = new ReadingCost(s_code).Mean * readingsASecond / CostReport.BucketsASecond;
        foreach (var costs in new[] { Stretches.Quiet(s_code, readingsASecond), Stretches.Running(s_code, readingsASecond) })
        {
            Assert.IsLessThanOrEqualTo(
                CostLimits.Close, costs.Percentile(99, step => step.Readings.Instructions) - readings, costs.Name);
        }
    }

    [TestMethod]
    public void TheCloseIsNeverDear()
    {
        foreach (var costs in s_all.Value)
        {
            Assert.IsLessThanOrEqualTo(CostLimits.CloseRarely, costs.Worst(step => step.Readings.Instructions), costs.Name);
        }
    }

    [TestMethod]
    public void NothingIsAllocatedWhileNobodyTypes()
    {
        foreach (var costs in s_all.Value)
        {
            Assert.AreEqual(0, costs.Total.Allocations, costs.Name);

            // When a fault comes up the sounder says so; that loads a literal.
            Assert.IsLessThanOrEqualTo(1, costs.Total.Literals, costs.Name);
        }
    }

    // The literals of a watch's lines are objects on the device; the report shows how many.
    [TestMethod]
    [DataRow("watch")]
    [DataRow("record")]
    public void NothingIsAllocatedWhileAStreamFlows(string word) =>
        Assert.AreEqual(0, Stretches.Streaming(s_code, 2000, word).Total.Allocations);
}
