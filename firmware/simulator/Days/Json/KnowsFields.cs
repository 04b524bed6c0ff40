namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>A tool that the box of a day file knows; see <see cref="KnownTool"/> for what its members mean.</summary>
internal sealed class KnowsFields
{
    public required string Tool { get; init; }

    [Between(0, 180)]
    public double? RunOn { get; init; }

    public bool NoVacuum { get; init; }
}
