using System.Text.RegularExpressions;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;

namespace NanoDustSwitch.EnclosureTests;

/// <summary>
/// What a page of the hardware may say: links that lead somewhere, words that the console knows, answers that it gives.
/// </summary>
internal static partial class PageRules
{
    private static readonly WordList s_words = new LiveShop(FlashImage.Blank()).Rig.Switch.Console.Words;

    // What the pages may cite of the console's answers, figures aside, all came up here.
    private static readonly Lazy<string> s_said = new(() => WithoutFigures(Type(
        "status", "/sensor out", "/wait 3", "why", "/sensor in", "/wait 20",
        "/run table", "/wait 5", "why", "/stop table", "/wait 10",
        "test", "/wait 1", "/button 0.3", "/wait 4", "yes", "/wait 3")));

    /// <summary>Links that lead nowhere.</summary>
    /// <param name="page">The page.</param>
    public static IEnumerable<string> DeadLinks(Page page)
    {
        foreach (string link in page.LocalLinks)
        {
            string[] parts = link.Split('#');
            string path = parts[0].Length == 0 ? page.Name : $"{Path.GetDirectoryName(page.Name)}/{parts[0]}";
            if (!Path.Exists(Repository.PathOf(path)))
            {
                yield return $"{page.Name}: there is no {link}";
            }
            else if (parts.Length > 1 && !Page.Read(path).Anchors.Contains(parts[1]))
            {
                yield return $"{page.Name}: no heading for {link}";
            }
        }
    }

    /// <summary>Projects that a command names and that do not exist.</summary>
    /// <param name="page">The page.</param>
    public static IEnumerable<string> UnknownProjects(Page page) =>
        CommandProject().Matches(page.Text)
            .Select(match => match.Groups["project"].Value)
            .Where(project => !Directory.Exists(Repository.PathOf(project)))
            .Select(project => $"{page.Name}: there is no project {project}");

    /// <summary>What stands in backticks and is neither a line that the console takes, nor what it says, nor a command.</summary>
    /// <param name="page">The page.</param>
    public static IEnumerable<string> UnknownWords(Page page) =>
        page.Spans.Where(span => !IsCommand(span) && !IsTaken(span) && !IsSaid(span))
            .Select(span => $"{page.Name}: the console does not know '{span}'");

    /// <summary>Dialogues that the virtual shop would not have.</summary>
    /// <param name="page">The page.</param>
    public static IEnumerable<string> UntrueDialogues(Page page)
    {
        foreach (string fence in page.Fences("console"))
        {
            string shown = fence.Trim() + "\n";
            IEnumerable<string> typed = TypedLine().Matches(shown).Select(match => match.Groups["line"].Value);
            string said = Type([.. typed]);
            if (!WithoutFigures(said).Contains(WithoutFigures(shown), StringComparison.Ordinal))
            {
                yield return $"{page.Name}: the shop says:\n{said}";
            }
        }
    }

    private static bool IsCommand(string span) => CommandProject().IsMatch(span);

    // The answer to a question of any word is one as well.
    private static bool IsTaken(string span)
    {
        string first = span.Split(' ')[0];
        return span == "yes"
            || ((s_words.Find(first) != null || SettingsTable.Find(first) >= 0) && !Refusal().IsMatch(Type(span)));
    }

    private static bool IsSaid(string span) =>
        Regex.IsMatch(
            s_said.Value,
            Regex.Escape(WithoutFigures(span)).Replace(@"\.\.\.", ".+").Replace(@"\ ", " +"),
            RegexOptions.None,
            TimeSpan.FromSeconds(1));

    private static string Type(params string[] lines)
    {
        using StringReader input = new(string.Join('\n', lines));
        using StringWriter output = new() { NewLine = "\n" };
        PipedSession.Run(new LiveShop(FlashImage.Blank()), input, output);
        return output.ToString();
    }

    private static string WithoutFigures(string text) => Figure().Replace(text, "#");

    [GeneratedRegex(
        @"dotnet (run|test)( -c Release)?( --project)? (?<project>[a-z][\w./-]*)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CommandProject();

    [GeneratedRegex(@"^(> |.*\(yes or no\) )(?<line>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex TypedLine();

    [GeneratedRegex(@"There is no '| cannot be |^Type '|^Say what | must stay ", RegexOptions.Multiline, 1000)]
    private static partial Regex Refusal();

    [GeneratedRegex(@"\d[\d.:]*\d|\d", RegexOptions.None, 1000)]
    private static partial Regex Figure();
}
