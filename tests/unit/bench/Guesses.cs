using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>Asks a book of tools to the end.</summary>
internal static class Guesses
{
    /// <summary>What a start showed.</summary>
    public static ToolFigures Seen(int height, int after, int level)
    {
        ToolFigures seen = new ToolFigures();
        seen.Height = height;
        seen.After = after;
        seen.Level = level;
        return seen;
    }

    /// <summary>Which tool it is.</summary>
    public static ToolGuess Ask(ToolBook book, ToolFigures seen)
    {
        return Finish(book, seen, false);
    }

    /// <summary>Learns from a start.</summary>
    /// <returns>The tool's place.</returns>
    public static int Learn(ToolBook book, ToolFigures seen)
    {
        return Finish(book, seen, true).Learned;
    }

    /// <summary>Learns from as many starts as make a tool known.</summary>
    public static void LearnThrice(ToolBook book, ToolFigures seen)
    {
        for (int i = 0; i < ToolBook.StartsToKnow; i++)
        {
            Learn(book, seen);
        }
    }

    private static ToolGuess Finish(ToolBook book, ToolFigures seen, bool learns)
    {
        ToolGuess guess = new ToolGuess(book);
        guess.Ask(learns);
        while (guess.IsAsking)
        {
            guess.Step(seen);
        }

        return guess;
    }
}
