namespace NanoDustSwitch.SystemTests.Power;

/// <summary>A cut or a brown-out.</summary>
/// <param name="Factor">What is left of the voltage, as a part of nominal.</param>
/// <param name="Milliseconds">How long it lasts.</param>
internal sealed record PowerCut(double Factor, int Milliseconds)
{
    // The box's supply gives up below a half and bridges 20 ms. A cut ends with a step, and a step takes 2.5 ms.
    private const int BridgedMilliseconds = 15;
    private const int LostMilliseconds = 25;

    /// <summary>Gets what is tried at every moment; none lies on an edge of the box's supply.</summary>
    public static IReadOnlyList<PowerCut> All { get; } =
    [
        new(0, 4), new(0, BridgedMilliseconds), new(0, LostMilliseconds), new(0, 120), new(0, 700), new(0, 2500),
        new(0.4, BridgedMilliseconds), new(0.4, 60), new(0.4, 1200), new(0.55, 1200), new(0.75, 1200),
    ];

    /// <summary>Gets a value indicating whether the box loses its power.</summary>
    public bool IsFelt => Factor < 0.5 && Milliseconds >= LostMilliseconds;
}
