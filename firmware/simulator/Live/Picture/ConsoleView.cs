using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>The board's console with the line that is being typed.</summary>
/// <param name="screen">Its lines.</param>
internal sealed class ConsoleView(ConsoleScreen screen)
{
    private const int FewestRows = 2;

    /// <summary>Draws.</summary>
    /// <param name="heading">What stands above it.</param>
    /// <param name="shopLine">The line that is being typed for the shop, or null.</param>
    /// <param name="width">Columns.</param>
    /// <param name="rows">Rows, the heading included.</param>
    /// <returns>The picture.</returns>
    public IRenderable Draw(string heading, string? shopLine, int width, int rows)
    {
        List<IRenderable> lines = [Looks.Heading(heading)];
        foreach (ScreenLine line in screen.Last(Math.Max(FewestRows, rows) - 1, width, shopLine))
        {
            lines.Add(Line(line));
        }

        return new Rows(lines);
    }

    private static Paragraph Line(ScreenLine line)
    {
        Style look = line.IsShop ? Looks.Shop : Looks.Usual;
        if (line.Caret < 0)
        {
            // A row without a character would be no row.
            return new Paragraph(line.Text.Length == 0 ? " " : line.Text, look);
        }

        string text = line.Text.PadRight(line.Caret + 1);
        return new Paragraph()
            .Append(text[..line.Caret], look)
            .Append(text[line.Caret].ToString(), Looks.Caret)
            .Append(text[(line.Caret + 1)..], look);
    }
}
