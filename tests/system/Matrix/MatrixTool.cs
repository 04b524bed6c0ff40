using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>A row of the load matrix: a tool, how the switch is set for it, and what is asked.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Kind">How it draws its current.</param>
/// <param name="Amperes">Running current at full load, A rms.</param>
internal sealed record MatrixTool(string Name, ToolKind Kind, double Amperes)
{
    /// <summary>Gets what makes it special.</summary>
    public Action<ToolSpecification> Special { get; init; } = _ => { };

    /// <summary>Gets the light load as a part of the full one; 0.4 is an idling saw (common practice, no source).</summary>
    public double LightLoad { get; init; } = 0.4;

    /// <summary>Gets start-at, A; 0.6 is the default.</summary>
    public double StartAt { get; init; } = 0.6;

    /// <summary>Gets stop-below, A; 0.35 is the default.</summary>
    public double StopBelow { get; init; } = 0.35;

    /// <summary>
    /// Gets a value indicating whether only the slow lane can find it: it has half a second for a start and for a stop.
    /// </summary>
    public bool IsSmall { get; init; }

    /// <summary>
    /// Gets a value indicating whether its current comes some time after its switch, or climbs. Then its times count from the
    /// true current's crossing of <see cref="HasCome"/>, and what comes before may be seen and let go again.
    /// </summary>
    public bool ComesLater { get; init; }

    /// <summary>Gets the true current at which it has come, A: narrow pulses show half their rms and less.</summary>
    public double HasCome => HasComeTimes * StartAt;

    /// <summary>Gets the same as a multiple of start-at.</summary>
    public double HasComeTimes { get; init; } = 2;

    /// <summary>Gets what else stands on the tool's line and stays on, drawing less than start-at.</summary>
    public IReadOnlyList<ToolSpecification> Beside { get; init; } = [];

    /// <summary>Makes the tool.</summary>
    /// <returns>What the shop is told of it.</returns>
    public ToolSpecification Specify()
    {
        ToolSpecification tool = new() { Name = "tool", Kind = Kind, RatedAmperes = Amperes };
        Special(tool);
        return tool;
    }
}
