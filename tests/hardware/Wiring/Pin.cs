namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>A place of a part where a wire ends.</summary>
/// <param name="Name">Its name on the part.</param>
/// <param name="Side">Side of the part in the drawing.</param>
/// <param name="Island">What it belongs to: "mains", "earth", "elv" (extra-low voltage) or "console".</param>
internal sealed record Pin(string Name, string Side, string Island)
{
    /// <summary>Reads "name side island".</summary>
    public static Pin Parse(string text)
    {
        string[] words = text.Split(' ');
        return new Pin(words[0], words[1], words[2]);
    }
}
