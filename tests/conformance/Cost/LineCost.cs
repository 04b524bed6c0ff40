namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What a typed line costs, from its first letter to the prompt after its answer.</summary>
/// <param name="Line">The line.</param>
/// <param name="Steps">Steps until the prompt.</param>
/// <param name="More">What was executed in them, less what as many quiet steps execute.</param>
/// <param name="Dearest">The step that executed most, all of it.</param>
internal sealed record LineCost(string Line, int Steps, Counts More, Counts Dearest)
{
    private const int QuietSteps = 400;
    private const int MostSteps = 4000;

    public static LineCost Of(DeviceCode code, string line)
    {
        var rig = new MeteredSwitch(code, 2000);
        var quiet = Sum(rig.Run(QuietSteps)).Instructions / (double)QuietSteps;
        rig.Type(line + "\r");
        var text = "";
        var steps = new List<StepCost>();
        while (!text.EndsWith("\r\n> ", StringComparison.Ordinal))
        {
            Assert.IsLessThan(MostSteps, steps.Count, $"'{line}' has no end: {text}");
            steps.Add(rig.Step());
            text += rig.TakeSent();
        }

        var all = Sum(steps);
        return new LineCost(
            line,
            steps.Count,
            all with { Instructions = all.Instructions - (int)(quiet * steps.Count) },
            steps.MaxBy(step => step.All.Weighed)!.All);
    }

    private static Counts Sum(IEnumerable<StepCost> steps) => steps.Aggregate(default(Counts), (sum, step) => sum + step.All);
}
