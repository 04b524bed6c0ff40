using System.IO.Enumeration;
using System.Text.RegularExpressions;

namespace NanoDustSwitch.ConformanceTests.Texts;

/// <summary>
/// What a page names as a path of the repository is there. A path is what stands in code marks or in a command, and begins with
/// a folder of the repository's root.
/// </summary>
internal static partial class PathRule
{
    private static readonly HashSet<string> s_paths =
        [.. TextFiles.All.Keys.SelectMany(path => Above(path).Prepend(path))];

    private static readonly string[] s_top = [.. s_paths.Where(path => !path.Contains('/', StringComparison.Ordinal))];

    /// <summary>What a page names and is not there.</summary>
    /// <param name="page">Path of the page.</param>
    /// <param name="text">Its text.</param>
    public static IEnumerable<string> Findings(string page, string text)
    {
        var number = 0;
        foreach (var line in text.Split('\n'))
        {
            number++;
            foreach (var path in Named(line).Where(path => !IsThere(path)))
            {
                yield return $"{page}:{number}: there is no {path}";
            }
        }
    }

    /// <summary>The paths that a line names.</summary>
    public static IEnumerable<string> Named(string line) => CodeMarks().Matches(line)
        .SelectMany(mark => mark.Groups["code"].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        .Select(word => word.Trim('"', ',', ';').TrimEnd('/'))
        .Where(word => Array.Exists(s_top, top => word == top || word.StartsWith(top + "/", StringComparison.Ordinal)));

    // A star stands for any name: one file of that kind is enough.
    private static bool IsThere(string path) => path.Contains('*', StringComparison.Ordinal)
        ? s_paths.Any(there => FileSystemName.MatchesSimpleExpression(path, there))
        : s_paths.Contains(path);

    private static IEnumerable<string> Above(string path)
    {
        for (var end = path.LastIndexOf('/'); end > 0; end = path.LastIndexOf('/', end - 1))
        {
            yield return path[..end];
        }
    }

    [GeneratedRegex("`(?<code>[^`]+)`", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex CodeMarks();
}
