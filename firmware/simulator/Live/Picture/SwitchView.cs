using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>The switch: what it does and why, its lamp, button and relay, and the vacuum behind that.</summary>
/// <param name="live">The shop.</param>
/// <param name="glyphs">The signs.</param>
internal sealed class SwitchView(LiveShop live, Glyphs glyphs)
{
    private const int WhyRows = 4;
    private const int LabelWidth = 9;
    private const int BarWidth = 12;

    private Switch Switch => live.Rig.Switch;

    /// <summary>Draws.</summary>
    /// <param name="isLampOn">Whether the lamp shines, or did a moment ago.</param>
    /// <param name="width">Columns.</param>
    /// <returns>The picture.</returns>
    public IRenderable Draw(bool isLampOn, int width)
    {
        VacuumState state = Switch.Core.Vacuum.State;
        List<IRenderable> lines =
        [
            Looks.Heading("switch"),
            live.Rig.IsDark
                ? Line("state", "without power", Looks.Wrong)
                : Line("state", StateText.Of(Switch.Core), StateLooks.Look(Switch.Core)),
            .. Why(width - LabelWidth - 1),
            Panel(isLampOn),
            Relay(),
            RunOn(state),
        ];
        return new Rows(lines);
    }

    private static Paragraph Line(string label, string text, Style look) =>
        new Paragraph().Append($" {label,-LabelWidth}", Looks.Quiet).Append(text, look);

    private IEnumerable<IRenderable> Why(int width)
    {
        string why = live.Rig.IsDark ? ""
            : Switch.Console.IsGuiding && Switch.Core.Vacuum.State == VacuumState.Held ? "told off while teaching or testing"
            : FirmwareText.Of(output => Switch.Why.Write(output, Switch.Now));
        List<string> lines = Wrapped.Lines(why, width);
        for (int i = 0; i < WhyRows; i++)
        {
            yield return Line(i == 0 ? "why" : "", i < lines.Count ? lines[i] : "", Looks.Usual);
        }
    }

    private Paragraph Panel(bool isLampOn) =>
        Line("lamp", isLampOn ? $"{glyphs.Lit} lit   " : $"{glyphs.Dark} dark  ", isLampOn ? Looks.Passing : Looks.Quiet)
            .Append("button ", Looks.Quiet)
            .Append(live.Rig.Board.IsButtonDown ? "pressed" : "up");

    private Paragraph Relay()
    {
        VirtualShop shop = live.Shop;
        string vacuum = shop.Vacuum.IsRunning ? $"{shop.Vacuum.RmsAmperes:0.0} A" : "off";
        return Line("relay", shop.IsRelayClosed ? "closed  " : "open    ", shop.IsRelayClosed ? Looks.Running : Looks.Quiet)
            .Append("vacuum ", Looks.Quiet)
            .Append(vacuum, shop.Vacuum.IsRunning ? Looks.Running : Looks.Quiet);
    }

    private Paragraph RunOn(VacuumState state)
    {
        double full = Switch.Settings[SettingId.RunOn] / 1000.0;
        if (state != VacuumState.RunOn)
        {
            return Line("run-on", $"{full:0.#} s after the tool", Looks.Quiet);
        }

        double left = Switch.Core.Vacuum.Remaining(Switch.Now) / 1e6;
        double part = left / Math.Max(left, Switch.Core.Vacuum.IsStretched ? 60 : full);
        return Line("run-on", $"{glyphs.Bar(part, BarWidth)} {left,5:0.0} s left", Looks.Passing);
    }
}
