namespace NanoDustSwitch.Drawing.Netlists;

/// <summary>One wire, uncut from pin to pin.</summary>
internal sealed record Wire
{
    public required string From { get; init; }

    public required string To { get; init; }

    public required string Colour { get; init; }

    /// <summary>Transformers that it passes through on its way, once for each time.</summary>
    public string[] Through { get; init; } = [];

    public override string ToString() => $"{From} to {To}";
}
