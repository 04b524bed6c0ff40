using System.Text.RegularExpressions;

namespace NanoDustSwitch.ConformanceTests.Texts;

/// <summary>
/// The workflows run nothing of others that can change behind their backs, and do by themselves nothing that a script of the
/// repository could do and a person could try.
/// </summary>
[TestClass]
public partial class WorkflowTests
{
    private static readonly Dictionary<string, string> s_workflows = TextFiles.All
        .Where(file => file.Key.StartsWith(".github/workflows/", StringComparison.Ordinal))
        .ToDictionary(file => file.Key, file => file.Value, StringComparer.Ordinal);

    [TestMethod]
    public void TheWorkflowsAreOnlyCallers() =>
        Findings.AssertNone(s_workflows.SelectMany(file => Offences(file.Value).Select(line => $"{file.Key}: {line}")));

    [TestMethod]
    [DataRow("      - uses: actions/checkout@v7")]
    [DataRow("      - uses: actions/checkout@3d3c42e5aac5ba805825da76410c181273ba90b1")]
    [DataRow("        run: dotnet build nanoDustSwitch.sln")]
    [DataRow("    runs-on: ubuntu-latest")]
    [DataRow("    runs-on: windows-2022")]
    public void WhatIsNotPinnedOrNotInAScriptIsFound(string line) =>
        CollectionAssert.AreEqual(new[] { line.Trim() }, Offences(line).ToArray());

    [TestMethod]
    public void AReleaseSaysThatItHasNeverRunOnABoard()
    {
        var release = s_workflows[".github/workflows/release.yml"];
        Assert.Contains(" --prerelease", release, StringComparison.Ordinal);
        Assert.Contains(": never run on a board\"", release, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Offences(string workflow) => workflow.Split('\n').Select(line => line.Trim())
        .Where(line => Step().IsMatch(line) && !Allowed().IsMatch(line));

    [GeneratedRegex("^(- )?(uses|run|runs-on):", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Step();

    // The one line of another's program makes the release, which no script here can.
    [GeneratedRegex(
        """
        ^(-\ )?(
          uses:\ [\w-]+/[\w-]+@[0-9a-f]{40}\ \#\ v[\d.]+
          | runs-on:\ ubuntu-\d\d\.04
          | run:\ (\.ci/(run|release(\ image)?) | sudo\ apt-get\ .* | >)
        )$
        """,
        RegexOptions.IgnorePatternWhitespace | RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex Allowed();
}
