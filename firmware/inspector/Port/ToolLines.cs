using System.Text.RegularExpressions;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>The tools that a board knows, as lines of a backup: what <c>tools copy</c> writes, and what is typed back.</summary>
internal static partial class ToolLines
{
    private const string Begin = "tools ";

    /// <summary>Tells whether a line of a backup is one of a tool.</summary>
    /// <param name="line">The line, trimmed.</param>
    /// <returns>True when it is.</returns>
    public static bool IsOne(string line) => line.StartsWith(Begin, StringComparison.Ordinal);

    /// <summary>Reads them from a board.</summary>
    /// <param name="console">The board.</param>
    /// <returns>The lines.</returns>
    public static string[] Read(BoardConsole console) => [.. console.Ask("tools copy").Where(IsOne)];

    /// <summary>Checks a line of a backup.</summary>
    /// <param name="source">Where it stands, for complaints.</param>
    /// <param name="line">The line.</param>
    public static void Check(string source, string line)
    {
        if (!Form().IsMatch(line))
        {
            throw new UserException($"{source}: '{line}' is no line of 'tools copy'.");
        }
    }

    /// <summary>Puts them into a board; each answer is looked at.</summary>
    /// <param name="console">The board.</param>
    /// <param name="lines">The lines.</param>
    public static void Put(BoardConsole console, IReadOnlyList<string> lines)
    {
        foreach (string line in lines)
        {
            string answer = string.Join(' ', console.Ask(line));
            if (answer.Contains("nothing was changed", StringComparison.OrdinalIgnoreCase))
            {
                throw new UserException($"The board at {console.Name} did not take '{line}': {answer}");
            }
        }

        if (lines.Count > 0)
        {
            Console.WriteLine($"Its tools are those of the backup as well; {lines.Count} lines.");
        }
    }

    [GeneratedRegex(
        "^tools (put [0-9]{1,2} [0-9,]+|name [0-9]{1,2} [a-z0-9 -]{1,20}|no-vacuum [0-9]{1,2}|run-on [0-9]{1,2} [0-9]+ ms)$",
        RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex Form();
}
