using NanoDustSwitch.Simulator.Board;

namespace NanoDustSwitch.Simulator.Live;

/// <summary>
/// A session whose lines come from a file or another program: in virtual time, each answer in full before the next line.
/// </summary>
internal static class PipedSession
{
    // After the last line, what still waits (a save, for example) may happen.
    private const long LastMicroseconds = 2_000_000;

    /// <summary>Runs it to the end of the input.</summary>
    /// <param name="live">The shop.</param>
    /// <param name="input">Where lines come from.</param>
    /// <param name="output">Where everything is shown.</param>
    public static void Run(LiveShop live, TextReader input, TextWriter output)
    {
        live.Rig.RunUntilAnswered();
        Show();
        while (!live.Words.HasQuit && input.ReadLine() is { } line)
        {
            if (line.StartsWith(ShopWords.Mark))
            {
                IReadOnlyList<string> answer = live.Words.Run(line);

                // The board may have spoken meanwhile; its last line is the prompt, which the shop's words do not continue.
                Show();
                output.WriteLine(line);
                foreach (string one in answer)
                {
                    output.WriteLine($"  shop: {one}");
                }

                output.Write(live.Rig.Switch.Console.IsAtPrompt ? "> " : "");
            }
            else
            {
                output.Write(live.Rig.Ask(line));
            }
        }

        live.Rig.RunUntil(live.Rig.Board.ShopTime + LastMicroseconds);
        Show();
        output.WriteLine();

        void Show() => output.Write(SentText.Of(live.Rig.Board.Serial.TakeSent()));
    }
}
