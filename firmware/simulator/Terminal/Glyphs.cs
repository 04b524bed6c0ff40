namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>The signs that the picture is made of.</summary>
/// <param name="Full">A filled place of a bar.</param>
/// <param name="Empty">An empty one.</param>
/// <param name="Level">A level on a bar.</param>
/// <param name="Pointer">What points at a level from below.</param>
/// <param name="Lit">The lamp when it shines.</param>
/// <param name="Dark">The lamp when it does not.</param>
internal sealed record Glyphs(char Full, char Empty, char Level, char Pointer, char Lit, char Dark)
{
    private static readonly Glyphs s_plain = new('#', '.', '|', '^', '*', '-');
    private static readonly Glyphs s_drawn = new('█', '·', '┃', '▲', '●', '○');

    /// <summary>Gives the signs that a terminal can show.</summary>
    /// <param name="isUnicode">Whether it shows more than ASCII.</param>
    /// <returns>The signs.</returns>
    public static Glyphs For(bool isUnicode) => isUnicode ? s_drawn : s_plain;

    /// <summary>Gives a bar.</summary>
    /// <param name="part">How much of it is filled, 0 to 1.</param>
    /// <param name="width">Its places.</param>
    /// <returns>The bar.</returns>
    public string Bar(double part, int width)
    {
        int full = (int)Math.Round(Math.Clamp(part, 0, 1) * width);
        return new string(Full, full) + new string(Empty, width - full);
    }
}
