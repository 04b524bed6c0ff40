namespace NanoDustSwitch.Drawing.Sheets;

/// <summary>A point of the drawing's grid.</summary>
internal sealed record Spot(int X, int Y)
{
    /// <summary>The next point to the right (0), below (1), to the left (2) or above (3).</summary>
    public Spot Next(int direction) => direction switch
    {
        0 => this with { X = X + 1 },
        1 => this with { Y = Y + 1 },
        2 => this with { X = X - 1 },
        _ => this with { Y = Y - 1 },
    };
}
