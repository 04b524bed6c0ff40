namespace NanoDustSwitch.ConformanceTests.Texts;

[TestClass]
public class PathTests
{
    [TestMethod]
    [DataRow("DEVELOPERS.md")]
    [DataRow(".github/CONTRIBUTING.md")]
    public void EveryPathThatAPageNamesIsThere(string page) =>
        Findings.AssertNone(PathRule.Findings(page, TextFiles.All[page]));

    [TestMethod]
    [DataRow("go to `firmware/switch/Console`")]
    [DataRow("go to `firmware/switch/Console/` or `README.md`")]
    [DataRow("type `dotnet test tests/unit --filter X`")]
    [DataRow("a netlist of `hardware/wiring/*.json`")]
    [DataRow("`Console/Words` is in another folder, and detection-core/Else is no code")]
    public void WhatIsThereIsLeftAlone(string line) => Assert.IsEmpty(PathRule.Findings("X.md", line));

    [TestMethod]
    [DataRow("go to `firmware/switch/Console/Else.cs`", "X.md:1: there is no firmware/switch/Console/Else.cs")]
    [DataRow("\ntype `dotnet test tests/else --filter X`", "X.md:2: there is no tests/else")]
    [DataRow("`README.md` and `detection-core/*.json`", "X.md:1: there is no detection-core/*.json")]
    public void WhatIsNotThereIsFound(string text, string expected) =>
        Assert.AreEqual(expected, PathRule.Findings("X.md", text).Single());

    [TestMethod]
    public void TheTableOfPlacesIsRead() =>
        Assert.IsGreaterThan(50, TextFiles.All["DEVELOPERS.md"].Split('\n').Sum(line => PathRule.Named(line).Count()));
}
