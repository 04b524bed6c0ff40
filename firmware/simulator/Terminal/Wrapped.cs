namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>A text in lines.</summary>
internal static class Wrapped
{
    /// <summary>Cuts a text between words.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Characters that fit into a line.</param>
    /// <returns>The lines, one at least.</returns>
    public static List<string> Lines(string text, int width)
    {
        List<string> lines = [""];
        foreach (string word in text.Split(' ').SelectMany(word => Pieces(word, width)))
        {
            string longer = lines[^1].Length == 0 ? word : $"{lines[^1]} {word}";
            if (longer.Length <= width)
            {
                lines[^1] = longer;
            }
            else
            {
                lines.Add(word);
            }
        }

        return lines;
    }

    // A word that is wider than a line is cut; nobody says such a word but a device that is none of ours.
    private static IEnumerable<string> Pieces(string word, int width) =>
        word.Length <= width ? [word] : word.Chunk(Math.Max(1, width)).Select(piece => new string(piece));
}
