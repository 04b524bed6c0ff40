namespace NanoDustSwitch.EnclosureTests;

/// <summary>A part on the mounting plate as a box, in mm; its height counts from the plate.</summary>
/// <param name="Name">Its name in words.</param>
/// <param name="X">Along the box, of its corner.</param>
/// <param name="Y">Across.</param>
/// <param name="Along">Its size along the box.</param>
/// <param name="Across">Its size across.</param>
/// <param name="Height">Its height.</param>
internal sealed record Block(string Name, double X, double Y, double Along, double Across, double Height)
{
    public double EndX => X + Along;

    public double EndY => Y + Across;

    public double MiddleX => X + (Along / 2);

    public double MiddleY => Y + (Across / 2);

    /// <summary>Tells the gap to another in the plane of the plate; below 0 where they overlap.</summary>
    /// <param name="other">The other.</param>
    public double GapTo(Block other)
    {
        double x = Math.Max(other.X - EndX, X - other.EndX);
        double y = Math.Max(other.Y - EndY, Y - other.EndY);
        return x > 0 && y > 0 ? double.Hypot(x, y) : Math.Max(x, y);
    }
}
