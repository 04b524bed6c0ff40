namespace NanoDustSwitch.Benchmarks.Report;

/// <summary>A figure that is wanted.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">What came out.</param>
/// <param name="Must">What it must not exceed.</param>
/// <param name="Aim">What is aimed at.</param>
/// <param name="Format">How it is written.</param>
internal sealed record Goal(string Name, double Value, double Must, double Aim, string Format)
{
    /// <summary>Gets a value indicating whether it is as it must be.</summary>
    public bool IsMet => Value <= Must;

    /// <summary>Gets a value indicating whether it is as aimed at.</summary>
    public bool IsAim => Value <= Aim;

    /// <summary>Gets what that makes.</summary>
    public string Verdict => IsAim ? "aim" : IsMet ? "must" : "MISSED";
}
