namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>A rectangle along the board's edges, mm.</summary>
internal sealed record Box(double Left, double Top, double Right, double Bottom)
{
    public double X => (Left + Right) / 2;

    public double Y => (Top + Bottom) / 2;

    public static Box Around(double x, double y, double wide, double high) => new(x - wide, y - high, x + wide, y + high);

    public static Box Around((double X, double Y) one, (double X, double Y) other, double margin) => new(
        Math.Min(one.X, other.X) - margin,
        Math.Min(one.Y, other.Y) - margin,
        Math.Max(one.X, other.X) + margin,
        Math.Max(one.Y, other.Y) + margin);

    public static Box Around(IEnumerable<Box> boxes) => boxes.Aggregate((one, other) => new Box(
        Math.Min(one.Left, other.Left),
        Math.Min(one.Top, other.Top),
        Math.Max(one.Right, other.Right),
        Math.Max(one.Bottom, other.Bottom)));

    /// <summary>Gap between two boxes, 0 where they meet.</summary>
    public double GapTo(Box other) => Math.Sqrt(
        Math.Pow(Math.Max(0, Math.Max(other.Left - Right, Left - other.Right)), 2)
        + Math.Pow(Math.Max(0, Math.Max(other.Top - Bottom, Top - other.Bottom)), 2));

    /// <summary>From middle to middle.</summary>
    public double From(Box other) => Math.Sqrt(Math.Pow(X - other.X, 2) + Math.Pow(Y - other.Y, 2));
}
