namespace NanoDustSwitch.Drawing.Netlists;

/// <summary>A part of the drawing with a ground of its own.</summary>
internal sealed record Zone
{
    public required string Text { get; init; }

    /// <summary>mains, barrier, elv or outside.</summary>
    public required string Kind { get; init; }

    public required int[] At { get; init; }

    public required int[] Size { get; init; }
}
