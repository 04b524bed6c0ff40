namespace NanoDustSwitch.Simulator.Live.Picture;

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
        foreach (string word in text.Split(' '))
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
}
