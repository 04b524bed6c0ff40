namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>A course of noise of 1 rms, a value for each reading.</summary>
internal interface INoise
{
    /// <summary>The next value.</summary>
    double Next();
}
