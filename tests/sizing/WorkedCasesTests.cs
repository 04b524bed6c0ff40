using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Sources;

namespace NanoDustSwitch.SizingTests;

/// <summary>The program against the worked cases.</summary>
[TestClass]
public sealed class WorkedCasesTests
{
    public static IEnumerable<object[]> Names => WorkedCases.All.Select(each => new object[] { each.Name });

    [TestMethod]
    [DynamicData(nameof(Names))]
    public void The_program_comes_to_the_figures_worked_out_by_hand(string name)
    {
        WorkedCase worked = WorkedCases.All.Single(each => each.Name == name);
        Assert.AreEqual(worked.ExitCode, new Terminal(worked.Line).ExitCode, name);
        if (worked.ExitCode == 2)
        {
            return;
        }

        Judged judged = new(worked.Line);
        foreach (Expected expected in worked.Figures)
        {
            Finding finding = judged.Finding(expected.Section, expected.What);
            Assert.AreEqual(expected.Mark, MarkOf(finding.Outcome), $"{finding.What}: {finding.Working}");
            Assert.AreEqual(expected.Source, finding.Source.ToString(), finding.What);
            foreach (string figure in expected.Figures)
            {
                StringAssert.Contains(finding.Working, figure, StringComparison.Ordinal);
            }
        }
    }

    [TestMethod]
    public void There_are_a_dozen_and_all_places_are_among_them()
    {
        Assert.IsGreaterThanOrEqualTo(12, WorkedCases.All.Count);
        const string Parts = "100V|120V|230V|240V|UK13|AU10|CH10|EU16|hall-5A|--turns|mm2|AWG|hp|W |ft/|--ready-made";
        foreach (string part in Parts.Split('|'))
        {
            Assert.IsTrue(WorkedCases.All.Any(each => each.Line.Contains(part, StringComparison.Ordinal)), part);
        }
    }

    private static string MarkOf(Outcome outcome) => outcome switch
    {
        Outcome.Fits => "ok",
        Outcome.Mind => "mind",
        Outcome.Add => "add",
        _ => "NO",
    };
}
