namespace NanoDustSwitch.Benchmarks.Report;

/// <summary>A figure that is wanted, and of how many trials it comes.</summary>
/// <param name="Count">Number of trials.</param>
/// <param name="Goal">The figure.</param>
internal sealed record CountedGoal(int Count, Goal Goal);
