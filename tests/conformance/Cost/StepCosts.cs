namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What the steps of a stretch of time cost.</summary>
/// <param name="Name">What happened in it.</param>
/// <param name="Steps">The steps.</param>
/// <param name="Methods">What each method cost in it.</param>
internal sealed record StepCosts(string Name, IReadOnlyList<StepCost> Steps, IReadOnlyList<MethodCost> Methods)
{
    /// <summary>Gets all that was executed.</summary>
    public Counts Total => Steps.Aggregate(default(Counts), (sum, step) => sum + step.All);

    /// <summary>Mean of a figure over the steps.</summary>
    public double Mean(Func<StepCost, int> figure) => Steps.Average(figure);

    /// <summary>What so many of a hundred steps do not exceed.</summary>
    public int Percentile(int percent, Func<StepCost, int> figure) =>
        Steps.Select(figure).Order().ElementAt(((Steps.Count * percent) + 99) / 100 - 1);

    /// <summary>What no step exceeds.</summary>
    public int Worst(Func<StepCost, int> figure) => Steps.Max(figure);
}
