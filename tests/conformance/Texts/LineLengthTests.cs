namespace NanoDustSwitch.ConformanceTests.Texts;

[TestClass]
public class LineLengthTests
{
    [TestMethod]
    public void NoLineIsTooLong()
    {
        var findings = TextFiles.All
            .SelectMany(file => LineLengthRule.Findings(file.Key, file.Value))
            .Order(StringComparer.Ordinal)
            .ToList();
        Assert.IsEmpty(findings, Environment.NewLine + string.Join(Environment.NewLine, findings));
    }

    [TestMethod]
    public void EveryKindOfTextIsLookedAt()
    {
        string[] some = [".ci/run", ".github/workflows/build.yml", "Directory.Build.props", "README.md", "tests/unit/Usings.cs"];
        Assert.IsEmpty(some.Except(TextFiles.All.Keys));
        Assert.DoesNotContain(path => path.StartsWith("artifacts/", StringComparison.Ordinal), TextFiles.All.Keys);
    }

    [TestMethod]
    [DataRow("detection-core/Else.cs", "// ", true)]
    [DataRow(".ci/run", "# ", true)]
    [DataRow("README.md", "", true)]
    [DataRow("README.md", "A [link](README.md) in a sentence ", true)]
    [DataRow("README.md", "```\nx\n```\n", true)]
    [DataRow("README.md", "```\n", false)]
    [DataRow("README.md", "| cell ", false)]
    [DataRow("README.md", "> | cell ", false)]
    [DataRow("hardware/wiring/else.svg", "", false)]
    [DataRow("hardware/parts.csv", "", false)]
    public void ALineThatIsTooLongIsFoundWhereOneCanBreakIt(string path, string begin, bool isFound)
    {
        var line = begin[(begin.LastIndexOf('\n') + 1)..];
        var fits = begin + new string('a', LineLengthRule.Limit - line.Length);
        Assert.IsEmpty(LineLengthRule.Findings(path, fits));
        Assert.AreEqual(isFound, LineLengthRule.Findings(path, fits + "a").Any());
    }

    [TestMethod]
    [DataRow("[a link](")]
    [DataRow("- ![a picture](")]
    public void ALinkByItselfMayBeLong(string begin) =>
        Assert.IsEmpty(LineLengthRule.Findings("README.md", $"{begin}{new string('a', LineLengthRule.Limit)})"));

    [TestMethod]
    public void TheLimitIsThatOfTheEditor() => Assert.AreEqual(130, LineLengthRule.Limit);
}
