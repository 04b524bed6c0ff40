using System.Text;
using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.Simulator.Live;

/// <summary>A session at a terminal that has no room for the picture, in real time.</summary>
internal static class TerminalSession
{
    private const string ShopColour = "\u001b[36m";
    private const string NoColour = "\u001b[0m";

    /// <summary>Runs until /quit, Ctrl-C or Ctrl-D.</summary>
    /// <param name="live">The shop.</param>
    /// <param name="isColoured">Whether the terminal knows colours.</param>
    public static void Run(LiveShop live, bool isColoured)
    {
        string shop = isColoured ? ShopColour : "";
        string plain = isColoured ? NoColour : "";
        using EndSignals signals = new();
        RealTime time = new(live.Rig);
        Keyboard keyboard = new(live);
        live.Words.Hold = Hold;

        // Looked at before anything is shown: from the first look on, keys come one by one and are not echoed.
        _ = Console.KeyAvailable;
        Console.WriteLine(
            $"{shop}This is the board's console. Lines that begin with / work the shop around it; /help lists them.{plain}");
        while (!live.Words.HasQuit && !signals.HaveCome)
        {
            time.CatchUp();
            if (keyboard.ShopLine is null)
            {
                ShowBoard();
            }

            while (!live.Words.HasQuit && !signals.HaveCome && Console.KeyAvailable)
            {
                string? before = keyboard.ShopLine;
                string? line = keyboard.Take(Console.ReadKey(intercept: true));
                if (before is null && keyboard.ShopLine is not null)
                {
                    // What was typed before is answered above it.
                    live.RunUntilAnswered();
                    ShowBoard();
                }

                Echo(before, keyboard.ShopLine);
                if (line is not null)
                {
                    Answer(line);
                }
            }

            Thread.Sleep(RealTime.PauseMilliseconds);
        }

        Console.WriteLine(plain);

        void ShowBoard() => Console.Write(Encoding.Latin1.GetString(live.Rig.Board.Serial.TakeSent()));

        void Hold(long microseconds)
        {
            long end = live.Rig.Board.ShopTime + microseconds;
            time.Reset();
            while (live.Rig.Board.ShopTime < end && !signals.HaveCome)
            {
                time.CatchUp();
                Thread.Sleep(RealTime.PauseMilliseconds);
            }
        }

        void Echo(string? before, string? after)
        {
            int grown = (after?.Length ?? 0) - (before?.Length ?? 0);
            if (grown > 0)
            {
                Console.Write($"{shop}{after![^grown..]}{plain}");
            }
            else if (grown == -1)
            {
                Console.Write("\b \b");
            }
        }

        void Answer(string line)
        {
            Console.WriteLine();
            foreach (string one in live.Words.Run(line))
            {
                Console.WriteLine($"{shop}  shop: {one}{plain}");
            }

            // A wait has made shop time run ahead; from here on it keeps pace with the clock again.
            time.Reset();
            Console.Write(live.Rig.Switch.Console.IsAtPrompt ? "> " : "");
        }
    }
}
