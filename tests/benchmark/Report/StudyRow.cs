namespace NanoDustSwitch.Benchmarks.Report;

/// <summary>A figure of a study; less is better.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Count">From how many trials.</param>
/// <param name="Figure">What came out.</param>
/// <param name="Must">What it must not exceed.</param>
/// <param name="Aim">What is aimed at.</param>
/// <param name="Unit">Its unit; none for a plain number.</param>
internal sealed record StudyRow(string Name, int Count, double Figure, double Must, double Aim, string Unit = "")
{
    /// <summary>Gets a value indicating whether it is as it must be.</summary>
    public bool IsMet => Figure <= Must;

    /// <summary>Gets a value indicating whether it is as aimed at.</summary>
    public bool IsAim => Figure <= Aim;
}
