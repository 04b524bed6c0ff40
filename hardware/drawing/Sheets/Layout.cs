using NanoDustSwitch.Drawing.Netlists;

namespace NanoDustSwitch.Drawing.Sheets;

/// <summary>Where the pins of a build are in its drawing.</summary>
internal static class Layout
{
    /// <summary>Grid of the drawing, in its units.</summary>
    public const int Grid = 10;

    /// <summary>Which way a wire leaves a pin, as a direction of <see cref="Spot"/>.</summary>
    public static int DirectionOf(Pin pin) => pin.Side switch { "right" => 0, "bottom" => 1, "left" => 2, _ => 3 };

    /// <summary>The pins of one side share it evenly, in their order.</summary>
    public static Spot PlaceOf(Part part, Pin pin)
    {
        Pin[] side = [.. part.Pins.Where(one => one.Side == pin.Side)];
        bool across = pin.Side is "top" or "bottom";
        int along = Snap(part.Size[across ? 0 : 1] * (Array.IndexOf(side, pin) + 1) / (side.Length + 1));
        int x = part.At[0] + (across ? along : pin.Side == "right" ? part.Size[0] : 0);
        int y = part.At[1] + (across ? pin.Side == "bottom" ? part.Size[1] : 0 : along);
        return new Spot(x / Grid, y / Grid);
    }

    public static Spot PlaceOf(Build build, string pin) => PlaceOf(build.PartOf(pin), build.PinOf(pin));

    private static int Snap(int value) => (value + (Grid / 2)) / Grid * Grid;
}
