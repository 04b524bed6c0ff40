using System.Text.RegularExpressions;

namespace NanoDustSwitch.EnclosureTests;

/// <summary>
/// The sheet to fill in asks for all that the page has measured, and neither says "fits" without its conditions.
/// </summary>
[TestClass]
public sealed partial class SheetTests
{
    private static readonly string s_page = Page.Read("hardware/README.md").Text;
    private static readonly string s_sheet = Page.Read("hardware/commissioning-sheet.md").Text;

    [TestMethod]
    public void Every_line_of_step_6_is_on_the_sheet()
    {
        string[] lines = [.. NumberedLine().Matches(s_page).Select(match => match.Groups["number"].Value)];
        Assert.HasCount(13, lines);
        Findings.AssertNone(lines.Where(line => !s_sheet.Contains($"\n| {line} | ", StringComparison.Ordinal)));
    }

    // The label has three currents: the tool's outlet, the vacuum's, both.
    [TestMethod]
    public void Every_current_of_the_label_has_its_heat_test_on_the_sheet()
    {
        string label = s_page[s_page.IndexOf("HOME-MADE", StringComparison.Ordinal)..];
        foreach ((string blank, string tested) in new[]
        {
            ("tool outlet at most ___ A", "tool outlet alone: ______ A"),
            ("vacuum outlet at most ___ A", "vacuum outlet alone: ______ A"),
            ("tool + vacuum together at most ___ A", "both: ______ A + ______ A"),
        })
        {
            Assert.Contains(blank, label);
            Assert.Contains($"| C10 | heat test, an hour, {tested}", s_sheet);
        }

        Assert.Contains("the label carries the current that was tested, never more", s_page);
    }

    [TestMethod]
    public void Fits_is_said_with_its_conditions()
    {
        foreach (string text in new[] { s_page, s_sheet })
        {
            MatchCollection said = Fits().Matches(text);
            Assert.IsNotEmpty(said);
            Findings.AssertNone(said.Where(match => !match.Value.Contains("condition", StringComparison.Ordinal))
                .Select(match => match.Value));
        }
    }

    // A pin that nothing is connected to floats; and a reset in the middle of a deployment would be a riddle.
    [TestMethod]
    public void Pages_agree_on_the_pin_of_the_vacuum_and_on_the_jumper()
    {
        Page flashing = Page.Read("firmware/README.md");
        Assert.DoesNotContain("leave it open", flashing.Text);
        Assert.Contains("jumper of R17", flashing.Text);
        Assert.Contains("Pull the jumper of R17 before you flash", Page.Read("hardware/circuits/README.md").Text);
    }

    [GeneratedRegex(@"^\| (?<number>\d+) \|", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NumberedLine();

    [GeneratedRegex(@"\*fits\*.{0,40}", RegexOptions.Singleline, 1000)]
    private static partial Regex Fits();
}
