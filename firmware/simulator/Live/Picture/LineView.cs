using NanoDustSwitch.Detection;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>The current on the tools' line as the switch sees it, and the two levels that it is held against.</summary>
/// <param name="live">The shop.</param>
/// <param name="glyphs">The signs.</param>
internal sealed class LineView(LiveShop live, Glyphs glyphs)
{
    private const int FigureWidth = 11;

    /// <summary>Draws.</summary>
    /// <param name="width">Columns.</param>
    /// <returns>The picture.</returns>
    public IRenderable Draw(int width)
    {
        AmpereScale scale = new(width - FigureWidth - 1);
        DetectionCore core = live.Rig.Switch.Core;
        double seen = live.Rig.IsDark ? 0 : core.SwingMilliamperes / 1000.0;
        double stop = core.StopMilliamperes / 1000.0;
        double start = core.StartMilliamperes / 1000.0;
        string margin = new(' ', FigureWidth);
        return new Rows(
            Looks.Heading($"current on the line, as the switch sees it in {live.Rig.Switch.Readings.ASecond:#,0} readings a second"),
            Bar(scale, width - FigureWidth - 1, seen, stop, start),
            new Paragraph(margin + scale.Levels(stop, start, glyphs.Pointer), Looks.Usual),
            new Paragraph(margin + scale.Figures(), Looks.Quiet));
    }

    private Paragraph Bar(AmpereScale scale, int width, double seen, double stop, double start)
    {
        Style look = seen >= start ? Looks.Running : seen >= stop ? Looks.Passing : Looks.Quiet;
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
