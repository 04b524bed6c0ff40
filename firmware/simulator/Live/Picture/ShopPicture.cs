using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>The whole screen: tools and switch on top, the line's current across, the board's console below.</summary>
/// <param name="live">The shop.</param>
/// <param name="screen">The console's lines.</param>
/// <param name="glyphs">The signs.</param>
internal sealed class ShopPicture(LiveShop live, ConsoleScreen screen, Glyphs glyphs)
{
    private const int SwitchRows = 9;
    private const int LineRows = 4;
    private const int LeastConsoleRows = 11;

    private readonly ToolsView _tools = new(live.Shop, glyphs);
    private readonly SwitchView _switch = new(live, glyphs);
    private readonly LineView _line = new(live, glyphs);
    private readonly ConsoleView _console = new(screen);

    /// <summary>Draws.</summary>
    /// <param name="width">Columns of the terminal.</param>
    /// <param name="height">Its rows.</param>
    /// <param name="isLampOn">Whether the lamp shines, or did since the last picture.</param>
    /// <param name="shopLine">The line that is being typed for the shop, or null.</param>
    /// <returns>The picture, exactly as high as the terminal.</returns>
    public IRenderable Draw(int width, int height, bool isLampOn, string? shopLine)
    {
        if (width < FullScreen.LeastWidth || height < FullScreen.LeastHeight)
        {
            return _console.Draw($"picture: from {FullScreen.LeastWidth} by {FullScreen.LeastHeight}", shopLine, width, height);
        }

        int wanted = Math.Max(SwitchRows, live.Shop.Wiring.Tools.Count + 1);
        int topRows = Math.Min(wanted, height - LineRows - LeastConsoleRows);
        int toolsWidth = width / 2;
        int consoleRows = height - topRows - LineRows;
        Layout tools = new Layout().Size(toolsWidth).Update(_tools.Draw(toolsWidth, topRows));
        Layout box = new Layout().Update(_switch.Draw(isLampOn, width - toolsWidth));
        Layout line = new Layout().Size(LineRows).Update(_line.Draw(width));
        Layout console = new Layout().Update(
            _console.Draw(
                "the board's console; lines that begin with / work the shop: /help, /quit", shopLine, width, consoleRows));
        return new Layout().SplitRows(new Layout().Size(topRows).SplitColumns(tools, box), line, console);
    }
}
