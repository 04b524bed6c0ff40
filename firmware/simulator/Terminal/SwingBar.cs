using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>A bar for the swing with the two levels on it, their names and the figures below: three rows.</summary>
/// <param name="glyphs">The signs.</param>
internal sealed class SwingBar(Glyphs glyphs)
{
    private const int FigureWidth = 11;

    /// <summary>Gives the look of a swing.</summary>
    /// <param name="seen">The swing in amperes.</param>
    /// <param name="stop">The lower level.</param>
    /// <param name="start">The upper one.</param>
    /// <returns>The look.</returns>
    public static Style Look(double seen, double stop, double start) =>
        seen >= start ? Looks.Running : seen >= stop ? Looks.Passing : Looks.Quiet;

    /// <summary>Draws.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="seen">The swing in amperes.</param>
    /// <param name="stop">The lower level.</param>
    /// <param name="start">The upper one.</param>
    /// <returns>The rows.</returns>
    public IEnumerable<IRenderable> Draw(int width, double seen, double stop, double start)
    {
        AmpereScale scale = new(width - FigureWidth - 1);
        string margin = new(' ', FigureWidth);
        yield return Bar(scale, width - FigureWidth - 1, seen, stop, start);
        yield return new Paragraph(margin + scale.Levels(stop, start, glyphs.Pointer), Looks.Usual);
        yield return new Paragraph(margin + scale.Figures(), Looks.Quiet);
    }

    private Paragraph Bar(AmpereScale scale, int width, double seen, double stop, double start)
    {
        Style look = Look(seen, stop, start);
        char[] bar = glyphs.Bar((scale.Column(seen) + 1.0) / width, width).ToCharArray();
        Paragraph line = new Paragraph().Append($" {seen,6:0.00} A  ", look);
        for (int i = 0; i < width; i++)
        {
            bool isLevel = i == scale.Column(stop) || i == scale.Column(start);
            char sign = isLevel ? glyphs.Level : bar[i];
            line.Append(sign.ToString(), isLevel ? Looks.Usual : sign == glyphs.Full ? look : Looks.Quiet);
        }

        return line;
    }
}
