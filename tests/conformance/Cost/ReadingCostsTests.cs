using NanoDustSwitch.Benchmarks;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>
/// The instructions that the benchmark prints beside its figures are those of the meter, to one or a twentieth.
/// </summary>
[TestClass]
[DoNotParallelize]
public class ReadingCostsTests
{
    private const double ReadingsABucket = 2000.0 / CostReport.BucketsASecond;

    private static readonly DeviceCode s_code = new(isMetered: true);

    [TestMethod]
    public void OursCostWhatTheMeterSays()
    {
        var quiet = Stretches.Quiet(s_code, 2000);
        Compare(Of(quiet, "BucketFiller.Fill") + Of(quiet, "DetectionCore.Accept"), ReadingCosts.Core);
        Compare(Of(quiet, "BucketFiller.Fill") + Of(quiet, "SwingWindow.Add"), ReadingCosts.FastLane);
        Compare(Of(quiet, "SlowLane.Add"), ReadingCosts.SlowLane);
    }

    [TestMethod]
    public void TheCommonMethodsCostWhatTheMeterSays()
    {
        var cost = new ReadingCost(s_code);
        Compare(cost.MeanOf("PracticeRun", "Maximum"), ReadingCosts.HalfSecondMaximum);
        Compare(cost.MeanOf("PracticeRun", "Rms"), ReadingCosts.CycleRms);
        Compare(cost.MeanOf("PracticeRun", "Swing"), ReadingCosts.RawSwing);
    }

    private static double Of(StepCosts costs, string method) =>
        costs.Methods.Single(one => one.Name == method).Whole.Instructions / (double)costs.Steps.Count / ReadingsABucket;

    private static void Compare(double metered, int written) => Assert.AreEqual(metered, written, Math.Max(1, metered / 20));
}
