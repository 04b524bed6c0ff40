using System.Diagnostics;

namespace NanoDustSwitch.Simulator.Live;

/// <summary>A session at a terminal, in real time.</summary>
internal static class TerminalSession
{
    private const int PauseMilliseconds = 5;
    private const string ShopColour = "\u001b[36m";
    private const string Plain = "\u001b[0m";

    /// <summary>Runs until /quit.</summary>
    /// <param name="live">The shop.</param>
    public static void Run(LiveShop live)
    {
        Console.WriteLine($"{ShopColour}This is the board's console. Lines that begin with / work the shop around it; /help lists them.{Plain}");
        Stopwatch watch = Stopwatch.StartNew();
        long begin = live.Rig.Board.ShopTime;
        string? shopLine = null;
        bool isAtLineStart = true;
        while (!live.Words.HasQuit)
        {
            long target = begin + (watch.ElapsedTicks * 1_000_000L / Stopwatch.Frequency);
            live.Rig.RunUntil(target);
            if (shopLine is null)
            {
                Console.Write(live.Rig.Board.Serial.TakeShown());
            }

            while (Console.KeyAvailable && !live.Words.HasQuit)
            {
                ConsoleKeyInfo key = Console.ReadKey(intercept: true);
                if (shopLine is not null)
                {
                    shopLine = TypeAtShop(live, shopLine, key);
                    if (shopLine is null)
                    {
                        // A wait has made shop time run ahead; from here on it keeps pace with the clock again.
                        begin = live.Rig.Board.ShopTime;
                        watch.Restart();
                    }
                }
                else if (key.KeyChar == ShopWords.Mark && isAtLineStart)
                {
                    shopLine = "/";
                    Console.Write($"{ShopColour}/");
                }
                else
                {
                    isAtLineStart = key.Key == ConsoleKey.Enter;
                    live.Rig.Board.Serial.Type(key.Key == ConsoleKey.Enter ? "\r" : key.KeyChar == 0 ? "" : key.KeyChar.ToString());
                }
            }

            Thread.Sleep(PauseMilliseconds);
        }

        Console.WriteLine(Plain);
    }

    // Gives the line so far, or null when it is done.
    private static string? TypeAtShop(LiveShop live, string line, ConsoleKeyInfo key)
    {
        switch (key.Key)
        {
            case ConsoleKey.Enter:
                Console.WriteLine();
                foreach (string one in live.Words.Run(line))
                {
                    Console.WriteLine($"  shop: {one}");
                }

                Console.Write($"{Plain}> ");
                return null;
            case ConsoleKey.Backspace:
                Console.Write("\b \b");
                if (line.Length > 1)
                {
                    return line[..^1];
                }

                Console.Write(Plain);
                return null;
            default:
                if (key.KeyChar < ' ')
                {
                    return line;
                }

                Console.Write(key.KeyChar);
                return line + key.KeyChar;
        }
    }
}
