using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// A console word that was added in one place and forgotten in another: each test names the place that is missing.
[TestClass]
public class WordPlacesTests
{
    // What 'help' leaves for a word's usage before its line of help, and the width of a terminal.
    private const int UsageColumn = 20;
    private const int Terminal = 80;

    private static readonly Word[] s_all = All();

    [TestMethod]
    public void EveryClassOfAWordIsMadeAtTheBoot()
    {
        IEnumerable<Type> made = s_all.Select(word => word.GetType());
        Findings.AssertNone(typeof(Word).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Word))).Except(made)
            .Select(type => $"firmware/switch/AllWords.cs does not make {type.Name}: nobody can type it"));
    }

    [TestMethod]
    public void NoTwoWordsHaveOneName()
    {
        Findings.AssertNone(s_all.GroupBy(word => word.Name).Where(same => same.Count() > 1)
            .Select(same => $"{string.Join(" and ", same.Select(ClassOf))}: both are called '{same.Key}'"));
        Findings.AssertNone(s_all.Where(word => SettingsTable.Find(word.Name) >= 0)
            .Select(word => $"{ClassOf(word)}: there is a setting that is called '{word.Name}' as well"));
    }

    [TestMethod]
    public void EveryWordHasARowOfHelpThatFitsATerminal()
    {
        Findings.AssertNone(s_all
            .Where(word => word.Help.Length == 0 || word.Usage.Length >= UsageColumn || UsageColumn + word.Help.Length > Terminal)
            .Select(word => $"{ClassOf(word)}: 'help' has {UsageColumn - 1} characters for '{word.Usage}' and "
                + $"{Terminal - UsageColumn} for '{word.Help}'"));
    }

    [TestMethod]
    public void EveryWordIsOnTheConsolesPage()
    {
        string page = File.ReadAllText(Repository.PathOf("firmware/console.md"));
        int begin = page.IndexOf("## The console", StringComparison.Ordinal);
        string section = page.Substring(begin, page.IndexOf("\n## ", begin, StringComparison.Ordinal) - begin);
        Findings.AssertNone(s_all.Where(word => !section.Contains($"`{word.Name}`") && !section.Contains($"`{word.Name} "))
            .Select(word => $"firmware/console.md, \"The console\", does not name `{word.Name}` of {ClassOf(word)}"));
    }

    [TestMethod]
    public void EveryWordHasAnApprovedAnswer()
    {
        IEnumerable<string> typed = File.ReadAllLines(Repository.PathOf("tests/system/approved/new-user.lines"))
            .Select(line => line.Trim().Split(' ')[0]);
        Findings.AssertNone(s_all.Where(word => !typed.Contains(word.Name))
            .Select(word => $"tests/system/approved/new-user.lines has no line '{word.Name}': nobody has approved its answer"));
    }

    private static Word[] All()
    {
        WordList words = new SwitchBench().Switch.Console.Words;
        return Enumerable.Range(0, words.Count).Select(words.At).ToArray();
    }

    private static string ClassOf(Word word)
    {
        return word.GetType().Name;
    }
}
