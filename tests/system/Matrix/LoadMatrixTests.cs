namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>
/// Every kind of tool at every frequency, phase, sensor, load, pace, noise and trouble: found, never dropped while it runs, and
/// released within four cycles of the end of its current (a tool that only the slow lane sees: within half a second). A sample of
/// the cases; the variable DUST_MATRIX asks for another number, or for all.
/// </summary>
[TestClass]
public sealed class LoadMatrixTests
{
    private const int Few = 480;
    private const int MostShown = 20;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Every_tool_is_found_never_dropped_and_released()
    {
        double[]? course = RecordedCourse.Find();
        IReadOnlyList<MatrixCase> cases = LoadMatrix.Cases(course != null);
        string wanted = Environment.GetEnvironmentVariable("DUST_MATRIX") ?? "";
        int count = wanted == "all" ? cases.Count : int.TryParse(wanted, out int number) ? Math.Min(number, cases.Count) : Few;
        MatrixOutcome[] outcomes = new MatrixOutcome[count];
        Parallel.For(0, count, i => outcomes[i] = MatrixRun.Play(cases[i], course));

        string[] bad = [.. outcomes.Where(outcome => outcome.Complaint.Length > 0).Select(outcome => outcome.Complaint)];
        TestContext.WriteLine($"{count} of {cases.Count} cases, {2 * count} starts, {bad.Length} with a complaint");
        TestContext.WriteLine(course is null
            ? "the recorded noise was left out: the recordings are not here; DUST_RECORDINGS names their folder"
            : "noise of the model, and of a recording");
        Show(outcomes, "tool", outcome => outcome.Case.Tool.Name);
        Show(outcomes, "frequency", outcome => $"{5 * Math.Floor(outcome.Case.Hertz / 5)} Hz and up");
        Show(outcomes, "sensor", outcome => outcome.Case.Sensor.ToString());
        Show(outcomes, "pace", outcome => outcome.Case.PaceName);
        Show(outcomes, "trouble", outcome => outcome.Case.Trouble.ToString());
        Assert.AreEqual("", string.Join(Environment.NewLine, bad.Take(MostShown)));

        // A sample that leaves a tool out shows nothing about it.
        Assert.HasCount(MatrixTools.All.Count, outcomes.Select(outcome => outcome.Case.Tool).Distinct().ToArray());
    }

    private void Show(MatrixOutcome[] outcomes, string title, Func<MatrixOutcome, string> key)
    {
        TestContext.WriteLine($"{title,-34} cases   bad  found, cycles  released, cycles (worst)");
        foreach (IGrouping<string, MatrixOutcome> group in
            outcomes.GroupBy(key).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            TestContext.WriteLine($"  {group.Key,-32} {group.Count(),5} "
                + $"{group.Count(outcome => outcome.Complaint.Length > 0),5} {group.Max(outcome => outcome.Found),14:0.00}  "
                + $"{group.Max(outcome => outcome.Released),16:0.00}");
        }
    }
}
