using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>The figures that are wanted of the starts, and what came out.</summary>
internal static class StartGoals
{
    /// <summary>Compares.</summary>
    /// <param name="found">What came of the starts of <see cref="StartKinds.Wanted"/>.</param>
    /// <returns>All figures.</returns>
    public static List<StudyRow> All(StartStudy found)
    {
        List<StudyRow> rows = [];
        string[] kinds = [.. StartKinds.Wanted.Select(kind => kind.Name)];
        string flat = kinds[^1];
        foreach (string kind in kinds[..2])
        {
            rows.Add(Above(found, kind, Which.First, SurgeTruth.Inside, 3, 1));
            rows.Add(Above(found, kind, Which.Later, SurgeTruth.Inside, 2, 0.5));
            rows.Add(Above(found, kind, Which.AfterCut, SurgeTruth.Inside, 2, 0.5));
            rows.Add(Above(found, kind, Which.Later, SurgeTruth.Near, 15, 5));
        }

        foreach ((string kind, double must, double aim) in new[] { (kinds[2], 2, 0.5), (kinds[3], 5, 1), (kinds[4], 5, 1) })
        {
            rows.Add(Above(found, kind, Which.First, SurgeTruth.Inside, must, aim));
            rows.Add(Above(found, kind, Which.Later, SurgeTruth.Inside, must, aim));
        }

        string[] surging = kinds[..^1];
        rows.Add(new(
            "later starts, command after the current is near, median",
            surging.Sum(kind => found.Count(kind, Which.Later)), found.AfterNear(surging, Which.Later, 0.5), 0.3, 0.2, "s"));
        rows.Add(new(
            "first starts, command after the current is near, 95 %",
            surging.Sum(kind => found.Count(kind, Which.First)), found.AfterNear(surging, Which.First, 0.95), 1, 0.8, "s"));
        rows.Add(new(
            "without a surge, first starts, command after onset, 95 %",
            found.Count(flat, Which.First), found.Delay(flat, Which.First, 0.95), 1, 0.8, "s"));
        rows.Add(new(
            "without a surge, later starts, command after onset, 80 %",
            found.Count(flat, Which.Later), found.Delay(flat, Which.Later, 0.8), 0.3, 0.2, "s"));
        return rows;
    }

    private static StudyRow Above(
        StartStudy found, string kind, Which which, double multiple, double must, double aim) => new(
        $"{kind}: {Name(which)} above {multiple} x settled",
        found.Count(kind, which),
        found.Above(kind, which, multiple),
        must,
        aim,
        "%");

    private static string Name(Which which) => which switch
    {
        Which.First => "first starts",
        Which.Later => "later starts",
        _ => "first start after a power cut",
    };
}
