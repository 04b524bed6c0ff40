namespace NanoDustSwitch.Sizing.Judging;

/// <summary>The findings about one subject.</summary>
/// <param name="Title">The subject.</param>
/// <param name="Findings">What was found, in the order of the working.</param>
internal sealed record Section(string Title, IReadOnlyList<Finding> Findings)
{
    /// <summary>Gets the worst that was found.</summary>
    public Outcome Outcome => Findings.Count == 0 ? Outcome.Fits : Findings.Max(finding => finding.Outcome);
}
