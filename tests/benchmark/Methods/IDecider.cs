namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>Decides from the readings whether a tool runs.</summary>
internal interface IDecider
{
    /// <summary>Takes a bucket's readings.</summary>
    /// <param name="readings">Where they are.</param>
    /// <param name="count">How many.</param>
    /// <returns>Whether the tool runs.</returns>
    bool Accept(int[] readings, int count);
}
