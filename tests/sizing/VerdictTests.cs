using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Judging;

namespace NanoDustSwitch.SizingTests;

/// <summary>The verdict: never without its conditions, and never "fits" where a part must be added.</summary>
[TestClass]
public sealed class VerdictTests
{
    private const string Good =
        "--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A --cord 2m/14AWG --sensor transformer-100A";
    private const string Thin = "--vacuum 7A --tool 5A/universal --supply 120V/60Hz --breaker 20A --plug US20 "
        + "--vacuum-circuit 20A --cord 2m/18AWG --sensor transformer-100A";

    [TestMethod]
    public void Fits_is_said_with_its_conditions()
    {
        Terminal terminal = new(Good);
        Assert.AreEqual(0, terminal.ExitCode);
        string verdict = Verdict(terminal);
        StringAssert.StartsWith(verdict, "Fits, on these conditions:", StringComparison.Ordinal);
        foreach (string condition in (string[])["residual-current device", "AC-3", "no generator", "all else"])
        {
            StringAssert.Contains(verdict, condition, StringComparison.Ordinal);
        }
    }

    [TestMethod]
    public void A_part_to_add_is_a_verdict_of_its_own()
    {
        Terminal terminal = new(Thin);
        Assert.AreEqual(3, terminal.ExitCode);
        string verdict = Verdict(terminal);
        StringAssert.StartsWith(verdict, "Fits if you add: - CB1, a breaker for equipment of 10 A", StringComparison.Ordinal);
        StringAssert.Contains(verdict, "and on these conditions: - ", StringComparison.Ordinal);
        StringAssert.Contains(verdict, "Without adding anything it would fit", StringComparison.Ordinal);
        StringAssert.Contains(verdict, "a thicker cord for the box", StringComparison.Ordinal);
    }

    [TestMethod]
    public void A_condition_is_said_once()
    {
        string[] conditions = [.. new Judged(Good + " --cord 3m/14AWG").Judgement.OtherConditions];
        CollectionAssert.AllItemsAreUnique(conditions);
    }

    // Whatever holds only with something more says what, or it could be read as "fits".
    [TestMethod]
    public void Every_part_to_add_is_named_with_its_rating()
    {
        foreach (WorkedCase each in WorkedCases.All.Where(each => each.ExitCode == 3))
        {
            Judged judged = new(each.Line);
            Assert.IsNotEmpty(judged.Judgement.Additions, each.Name);
            foreach (Finding finding in judged.Judgement.Sections.SelectMany(section => section.Findings)
                .Where(finding => finding.Outcome == Outcome.Add))
            {
                Assert.IsTrue(finding.Condition?.Contains(" A", StringComparison.Ordinal), finding.Working);
            }
        }
    }

    [TestMethod]
    public void What_is_marked_mind_is_among_the_conditions()
    {
        Judged judged = new(Good.Replace("2m/14AWG", "10m/14AWG"));
        Finding way = judged.Finding("Cords", "wall to tool");
        Assert.AreEqual(Outcome.Fits, way.Outcome);
        judged = new(Good.Replace("2m/14AWG", "18m/14AWG"));
        Assert.AreEqual(Outcome.Mind, judged.Finding("Cords", "wall to tool").Outcome);
        string conditions = string.Join(" ", new Advice(judged.Judgement, judged.Trials).Verdict.First().Lines);
        StringAssert.Contains(conditions, "wall to tool", StringComparison.Ordinal);
    }

    [TestMethod]
    public void A_head_without_a_cord_of_its_own_is_judged_by_the_tools()
    {
        const string Saw = "--vacuum 9A --tool 2hp --supply 240V/60Hz --breaker 20A --vacuum-circuit 15A/120V --cord 2m/14AWG "
            + "--sensor transformer-100A";
        Assert.AreEqual(0, new Terminal(Saw).ExitCode);
        StringAssert.Contains(Verdict(new Terminal(Saw)), "cord is of 12AWG or thicker", StringComparison.Ordinal);
        Assert.AreEqual(3, new Terminal(Saw + " --cord tool:3m/16AWG").ExitCode);
        Assert.AreEqual(3, new Terminal(Saw + " --cord head:3m/16AWG").ExitCode);
        Assert.AreEqual(0, new Terminal(Saw + " --cord head:3m/12AWG").ExitCode);

        // The head's plug and contact for 15 A, on 20 A.
        Judged judged = new(
            "--vacuum 9A --tool 10A --supply 120V/60Hz --breaker 20A --vacuum-circuit 15A --cord 2m/14AWG --cord head:1m/12AWG "
            + "--sensor transformer-100A");
        Finding contact = judged.Finding("Protection", "overload, head");
        Assert.AreEqual(Outcome.Add, contact.Outcome);
        StringAssert.Contains(contact.Working, "equipment of 15 A", StringComparison.Ordinal);
    }

    [TestMethod]
    public void A_head_goes_with_a_second_plug_only()
    {
        Terminal terminal = new(Good + " --cord head:1m/14AWG");
        Assert.AreEqual(2, terminal.ExitCode);
        StringAssert.Contains(terminal.Error, "only goes with --vacuum-circuit", StringComparison.Ordinal);
    }

    [TestMethod]
    public void A_refusal_of_a_small_tool_shows_figures_that_do_not_pass()
    {
        Judged judged = new(
            "--vacuum 1000W --tool 25W/universal --supply 230V/50Hz --breaker C16 --plug EU16 --cord 2m/1.5mm2 "
            + "--sensor transformer-100A --turns 10");
        Finding tool = judged.Finding("Smallest tool", "this tool");
        Assert.AreEqual(Outcome.Fails, tool.Outcome);

        // 0.4 x 25 W / 230 V / 0.9 = 48.3 mA; the console's start-at goes down to 50 mA, and a tool must be above that.
        StringAssert.Contains(tool.Working, "0.048 A", StringComparison.Ordinal);
        StringAssert.Contains(tool.Working, "below 0.05", StringComparison.Ordinal);
        StringAssert.Contains(
            judged.Finding("Smallest tool", "smallest tool").Working, "least start-at, 0.05 A", StringComparison.Ordinal);
    }

    private static string Verdict(Terminal terminal)
    {
        string shown = string.Join(' ', terminal.Shown.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        string after = shown[shown.IndexOf("To type at the box's console", StringComparison.Ordinal)..];
        return after[after.IndexOf("Fits", StringComparison.Ordinal)..];
    }
}
