using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>The current on the tools' line as the switch sees it, and the two levels that it is held against.</summary>
/// <param name="live">The shop.</param>
/// <param name="glyphs">The signs.</param>
internal sealed class LineView(LiveShop live, Glyphs glyphs)
{
    private readonly SwingBar _bar = new(glyphs);

    /// <summary>Draws.</summary>
    /// <param name="width">Columns.</param>
    /// <returns>The picture.</returns>
    public IRenderable Draw(int width)
    {
        DetectionCore core = live.Rig.Switch.Core;
        double seen = live.Rig.IsDark ? 0 : core.SwingMilliamperes / 1000.0;
        return new Rows(
            [
                Looks.Heading(
                    $"current on the line, as the switch sees it in {live.Rig.Switch.Readings.ASecond:#,0} readings a second"),
                .. _bar.Draw(width, seen, core.StopMilliamperes / 1000.0, core.StartMilliamperes / 1000.0),
            ]);
    }
}
