namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>What came of a case.</summary>
/// <param name="Case">The case.</param>
/// <param name="Found">Longest time from switching on to a tool found, cycles.</param>
/// <param name="Released">
/// Longest time from the end of the current to a tool released, cycles; negative where it was released before it.
/// </param>
/// <param name="Complaint">What was wrong; empty for nothing.</param>
internal sealed record MatrixOutcome(MatrixCase Case, double Found, double Released, string Complaint);
