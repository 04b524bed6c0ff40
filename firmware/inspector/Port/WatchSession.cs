using System.Diagnostics;
using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>The picture of a board at work, on a terminal.</summary>
internal static class WatchSession
{
    private static readonly TimeSpan s_frame = TimeSpan.FromMilliseconds(100);

    /// <summary>Runs until q, Escape, Ctrl-C or Ctrl-D.</summary>
    /// <param name="name">The port.</param>
    /// <param name="console">The terminal.</param>
    public static void Run(string name, IAnsiConsole console)
    {
        using EndSignals signals = new(isStopKeyOff: true);

        // Before the screen is taken: what is wrong at the beginning is said on the usual one.
        using WatchStream stream = new(name);
        WatchPicture picture = new(name, Glyphs.For(console.Profile.Capabilities.Unicode));
        FullScreen.Run(console, screen =>
        {
            long last = 0;
            while (!signals.HaveCome && !HasLeft())
            {
                if (stream.Next() is var (_, line))
                {
                    picture.Take(line);
                }
                else if (Stopwatch.GetElapsedTime(last) < s_frame)
                {
                    continue;
                }

                last = Stopwatch.GetTimestamp();
                screen.Show((width, height) => picture.Draw(width, height, stream.Trouble));
            }
        });
    }

    private static bool HasLeft()
    {
        const char EndOfInput = '\u0004';
        while (!Console.IsInputRedirected && Console.KeyAvailable)
        {
            ConsoleKeyInfo key = Console.ReadKey(intercept: true);
            if (key.Key is ConsoleKey.Q or ConsoleKey.Escape || key.KeyChar is 'q' or 'Q' or EndOfInput)
            {
                return true;
            }
        }

        return false;
    }
}
