using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>The tools, each with what it draws; its bar is full at one and a half times what it is rated for.</summary>
/// <param name="shop">The shop.</param>
/// <param name="glyphs">The signs.</param>
internal sealed class ToolsView(VirtualShop shop, Glyphs glyphs)
{
    private const int NameWidth = 11;
    private const int WidthWithoutBar = 34;
    private const double FullBar = 1.5;

    /// <summary>Draws.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="rows">Rows, the heading included.</param>
    /// <returns>The picture.</returns>
    public IRenderable Draw(int width, int rows)
    {
        bool hasTripped = shop.Wiring.Circuits.Any(circuit => circuit.Breaker.IsTripped);
        List<IRenderable> lines = [Looks.Heading(hasTripped ? "breaker tripped: /breaker" : "tools on the line")];
        foreach (Tool tool in shop.Wiring.Tools.Take(rows - 1))
        {
            lines.Add(Line(tool, width - WidthWithoutBar));
        }

        return new Rows(lines);
    }

    private Paragraph Line(Tool tool, int barWidth)
    {
        bool hasNoVoltage = tool.IsSwitchedOn && tool.IsPluggedIn && !tool.IsRunning && !tool.IsResting;
        Style look = tool.IsRunning ? Looks.Running : hasNoVoltage ? Looks.Wrong : Looks.Quiet;
        string name = tool.Name.Length > NameWidth ? tool.Name[..NameWidth] : tool.Name;
        double amperes = tool.RmsAmperes;
        return new Paragraph()
            .Append($" {name,-NameWidth} ", tool.IsRunning ? Looks.Usual : Looks.Quiet)
            .Append(
                $"{ShopWords.State(tool),-10} {glyphs.Bar(amperes / tool.RatedAmperes / FullBar, barWidth)} {amperes,6:0.00} A",
                look);
    }
}
