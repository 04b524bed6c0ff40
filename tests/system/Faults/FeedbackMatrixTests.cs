using NanoDustSwitch.SystemTests.Matrix;

namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>
/// Over the load matrix, in a box whose relay feeds the vacuum through the tool's sensor: found within three starts, whatever the
/// tool and the vacuum draw. A sample of the cases; the variable DUST_MATRIX asks for another number, or for all, and DUST_SEED
/// for the one of a complaint.
/// </summary>
[TestClass]
public sealed class FeedbackMatrixTests
{
    private const int Few = 120;
    private const int MostStarts = 3;
    private const int MostShown = 20;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void The_wrong_wiring_is_found_within_three_starts()
    {
        double[]? course = RecordedCourse.Find();
        IReadOnlyList<MatrixCase> cases = LoadMatrix.Cases(course != null);
        string wanted = Environment.GetEnvironmentVariable("DUST_MATRIX") ?? "";
        int count = wanted == "all" ? cases.Count : int.TryParse(wanted, out int number) ? Math.Min(number, cases.Count) : Few;
        if (int.TryParse(Environment.GetEnvironmentVariable("DUST_SEED"), out int seed))
        {
            cases = [cases.Single(one => one.Seed == seed)];
            count = 1;
        }

        FeedbackRun[] runs = new FeedbackRun[count];
        Parallel.For(0, count, i => runs[i] = FeedbackRun.Play(cases[i], course));

        FeedbackRun[] bad = [.. runs.Where(run => !run.IsFound || run.Starts > MostStarts)];
        TestContext.WriteLine(
            $"{count} of {cases.Count} cases, {bad.Length} not found within {MostStarts} starts; "
            + $"95 % bound {3.0 / count:0.00000}");
        ILookup<bool, FeedbackRun> found = runs.ToLookup(run => run.IsFound);
        foreach (IGrouping<int, FeedbackRun> group in found[true].GroupBy(run => run.Starts).OrderBy(group => group.Key))
        {
            TestContext.WriteLine($"  in start {group.Key}: {group.Count()}");
        }

        foreach (IGrouping<int, FeedbackRun> group in found[true].GroupBy(run => run.Closings).OrderBy(group => group.Key))
        {
            TestContext.WriteLine($"  after {group.Key} closings of the relay, the probes' among them: {group.Count()}");
        }

        Assert.AreEqual("", string.Join(Environment.NewLine, bad.Take(MostShown).Select(run => run.ToString())));
    }
}
