using System.Runtime.ExceptionServices;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>A terminal's whole screen for as long as a session lasts; afterwards the terminal is as it was.</summary>
/// <param name="console">The terminal.</param>
/// <param name="display">What shows on it.</param>
internal sealed class FullScreen(IAnsiConsole console, LiveDisplayContext display)
{
    /// <summary>Columns that a picture needs.</summary>
    public const int LeastWidth = 80;

    /// <summary>Rows that a picture needs.</summary>
    public const int LeastHeight = 24;

    // All but the scrolled-off lines, which are the person's and which a library's own clearing would take away as well.
    private const string ClearScreen = "\u001b[2J\u001b[H";

    // .NET lets the arrow keys send other codes and does not take that back.
    private const string UsualArrowKeys = "\u001b[?1l\u001b>";

    private (int Width, int Height) _size;

    /// <summary>Tells whether a terminal can show a picture.</summary>
    /// <param name="console">The terminal.</param>
    /// <returns>True when it can.</returns>
    public static bool Fits(IAnsiConsole console) =>
        console.Profile.Capabilities is { Ansi: true, AlternateBuffer: true }
        && console.Profile.Width >= LeastWidth && console.Profile.Height >= LeastHeight;

    /// <summary>Runs a session.</summary>
    /// <param name="console">The terminal.</param>
    /// <param name="session">The session.</param>
    public static void Run(IAnsiConsole console, Action<FullScreen> session)
    {
        ExceptionDispatchInfo? failure = null;

        // Looked at before anything is shown: from the first look on, keys come one by one and are not echoed.
        _ = !Console.IsInputRedirected && Console.KeyAvailable;
        console.AlternateScreen(() => console.Live(new Text("")).Overflow(VerticalOverflow.Crop).Start(display =>
        {
            try
            {
                session(new FullScreen(console, display));
            }
#pragma warning disable CA1031 // Whatever it is: it is thrown again once the terminal is as it was.
            catch (Exception exception)
#pragma warning restore CA1031
            {
                failure = ExceptionDispatchInfo.Capture(exception);
            }
        }));
        Console.Write(UsualArrowKeys);
        failure?.Throw();
    }

    /// <summary>Shows a picture.</summary>
    /// <param name="draw">Draws it for a number of columns and rows.</param>
    public void Show(Func<int, int, IRenderable> draw)
    {
        (int Width, int Height) size = (console.Profile.Width, console.Profile.Height);
        if (size != _size)
        {
            // What is left of the old picture lies elsewhere now.
            _size = size;
            Console.Write(ClearScreen);
        }

        display.UpdateTarget(draw(size.Width, size.Height));
    }
}
