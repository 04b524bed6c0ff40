using System.Text.RegularExpressions;
using NanoDustSwitch.ConformanceTests.Projects;

namespace NanoDustSwitch.ConformanceTests.Texts;

/// <summary>
/// No line is longer than <c>max_line_length</c> in .editorconfig allows, but for lines that cannot be broken and files that are
/// not written by hand.
/// </summary>
internal static class LineLengthRule
{
    /// <summary>Files that are left out, each with the reason.</summary>
    private static readonly (string Ending, string Reason)[] s_files =
    [
        (".svg", "made by a program"),
        (".csv", "a row of a table is one line"),
        (".json", "a row of a netlist or of parts is one line"),
        (".kicad_pcb", "written by KiCad"),
        (".kicad_sch", "laid out as KiCad writes it"),
        (".net", "written by KiCad"),
        (".sln", "written by Visual Studio"),
        (".nfproj", "laid out as Visual Studio's project system writes it"),
        ("packages.config", "laid out as NuGet writes it"),
    ];

    /// <summary>Lines of Markdown that are left out, each with the reason.</summary>
    private static readonly (string Pattern, string Reason)[] s_markdownLines =
    [
        (@"^\s*(> )?\|", "a row of a table cannot be broken"),
        (@"^\s*([-*] )?!?\[[^\]]*\]\([^)]*\)[.:]?$", "a link or a picture by itself cannot be broken"),
    ];

    /// <summary>Gets the greatest length that .editorconfig allows, in characters.</summary>
    public static int Limit { get; } =
        int.Parse(Match(Repository.ReadText(".editorconfig"), @"(?<=^max_line_length = )\d+").Value);

    /// <summary>Lines that are too long, as <c>file:line: length</c>.</summary>
    /// <param name="path">Path from the root.</param>
    /// <param name="text">What is in the file.</param>
    public static IEnumerable<string> Findings(string path, string text)
    {
        if (s_files.Any(file => path.EndsWith(file.Ending, StringComparison.Ordinal)))
        {
            yield break;
        }

        var isMarkdown = path.EndsWith(".md", StringComparison.Ordinal);
        var isShown = false;
        var number = 0;
        foreach (var line in text.Split('\n').Select(line => line.TrimEnd('\r')))
        {
            number++;

            // What a fence encloses is shown as a person types it or a program prints it, however long.
            isShown ^= isMarkdown && line.TrimStart().StartsWith("```", StringComparison.Ordinal);
            var isLeftOut = isShown || (isMarkdown && s_markdownLines.Any(left => Match(line, left.Pattern).Success));
            if (line.Length > Limit && !isLeftOut)
            {
                yield return $"{path}:{number}: {line.Length} characters; {Limit} are allowed";
            }
        }
    }

    private static Match Match(string text, string pattern) =>
        Regex.Match(text, pattern, RegexOptions.Multiline | RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1));
}
