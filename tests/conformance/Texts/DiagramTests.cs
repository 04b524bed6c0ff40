using System.Text.RegularExpressions;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.ConformanceTests.Texts;

/// <summary>The diagram of DEVELOPERS.md shows every part of the core, and no part that is no more.</summary>
[TestClass]
public class DiagramTests
{
    // The core itself is the whole diagram.
    private static readonly string[] s_parts =
    [
        .. typeof(DetectionCore).Assembly.GetTypes()
            .Where(type => type != typeof(DetectionCore) && type.GetMethod(nameof(DetectionCore.Exchange)) is not null)
            .Select(type => type.Name),
    ];

    private static readonly string s_diagram = TextFiles.All["DEVELOPERS.md"].Split("```")[1];

    [TestMethod]
    public void EveryPartThatHasAStateIsInTheDiagram()
    {
        Assert.Contains(nameof(FeedbackWatch), s_parts);
        Findings.AssertNone(s_parts.Except(Names(s_diagram)).Select(part => $"the diagram in DEVELOPERS.md lacks {part}"));
    }

    [TestMethod]
    public void EveryNameInTheDiagramIsThatOfAPart() => Findings.AssertNone(Names(s_diagram)
        .Except(typeof(Switch).Assembly.GetTypes().Concat(typeof(DetectionCore).Assembly.GetTypes()).Select(type => type.Name))
        .Select(name => $"the diagram in DEVELOPERS.md shows {name}, and there is no such class"));

    private static IEnumerable<string> Names(string text) =>
        Regex.Matches(text, "[A-Z][A-Za-z]+", RegexOptions.None, TimeSpan.FromSeconds(1)).Select(match => match.Value);
}
