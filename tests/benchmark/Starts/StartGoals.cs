using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>The figures that are wanted of the starts, and what came out.</summary>
internal static class StartGoals
{
    private const string Percent = "0.0";
    private const string Seconds = "0.00";

    /// <summary>Compares.</summary>
    /// <param name="found">What came of the starts of <see cref="StartKinds.Wanted"/>.</param>
    /// <returns>All figures.</returns>
    public static List<CountedGoal> All(StartStudy found)
    {
        List<CountedGoal> goals = [];
        string[] kinds = [.. StartKinds.Wanted.Select(kind => kind.Name)];
        string flat = kinds[^1];
        foreach (string kind in kinds[..2])
        {
            goals.Add(Above(found, kind, true, SurgeTruth.Inside, 3, 1));
            goals.Add(Above(found, kind, false, SurgeTruth.Inside, 2, 0.5));
            goals.Add(Above(found, kind, false, SurgeTruth.Near, 15, 5));
        }

        foreach ((string kind, double must, double aim) in new[] { (kinds[2], 2, 0.5), (kinds[3], 5, 1), (kinds[4], 5, 1) })
        {
            goals.Add(Above(found, kind, true, SurgeTruth.Inside, must, aim));
            goals.Add(Above(found, kind, false, SurgeTruth.Inside, must, aim));
        }

        string[] surging = kinds[..^1];
        goals.Add(new(
            surging.Sum(kind => found.Count(kind, false)),
            new(
                "later starts, command after the current is near, median, s",
                found.AfterNear(surging, false, 0.5), 0.3, 0.2, Seconds)));
        goals.Add(new(
            surging.Sum(kind => found.Count(kind, true)),
            new(
                "first starts, command after the current is near, 95 %, s",
                found.AfterNear(surging, true, 0.95), 1, 0.8, Seconds)));
        goals.Add(new(
            found.Count(flat, true),
            new(
                "without a surge, first starts, command after onset, 95 %, s",
                found.Delay(flat, true, 0.95), 1, 0.8, Seconds)));
        goals.Add(new(
            found.Count(flat, false),
            new(
                "without a surge, later starts, command after onset, 80 %, s",
                found.Delay(flat, false, 0.8), 0.3, 0.2, Seconds)));
        return goals;
    }

    private static CountedGoal Above(
        StartStudy found, string kind, bool isFirst, double multiple, double must, double aim) => new(
        found.Count(kind, isFirst),
        new(
            $"{kind}: {(isFirst ? "first" : "later")} starts above {multiple} x settled, %",
            found.Above(kind, isFirst, multiple),
            must,
            aim,
            Percent));
}
