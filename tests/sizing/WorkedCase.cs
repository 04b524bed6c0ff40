namespace NanoDustSwitch.SizingTests;

/// <summary>A case that was worked out by hand.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Line">The options.</param>
/// <param name="ExitCode">What the program must end with.</param>
/// <param name="Figures">The figures that decide.</param>
internal sealed record WorkedCase(string Name, string Line, int ExitCode, params Expected[] Figures)
{
    /// <inheritdoc/>
    public override string ToString() => Name;
}
