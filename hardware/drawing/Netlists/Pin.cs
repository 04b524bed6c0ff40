namespace NanoDustSwitch.Drawing.Netlists;

/// <summary>A place of a part where a wire ends.</summary>
/// <param name="Name">Its name on the part.</param>
/// <param name="Side">Side of the part in the drawing.</param>
/// <param name="Island">What it belongs to: "mains", "earth", "elv" (extra-low voltage) or "console".</param>
internal sealed record Pin(string Name, string Side, string Island)
{
    /// <summary>Reads "name side island".</summary>
    public static Pin Parse(string text) =>
        text.Split(' ') is [{ Length: > 0 } name, "left" or "right" or "top" or "bottom", var island] words
            ? new Pin(name, words[1], island)
            : throw new InvalidDataException(
                $"'{text}' is no pin; it takes a name, a side (left, right, top, bottom) and an island.");
}
