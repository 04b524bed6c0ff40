using System.Text.RegularExpressions;

namespace NanoDustSwitch.EnclosureTests;

/// <summary>The page never says "fits" without its conditions, and agrees with the page on flashing.</summary>
[TestClass]
public sealed partial class PathTests
{
    private static readonly string s_page = Page.Read("hardware/README.md").Text;

    [TestMethod]
    public void Fits_is_said_with_its_conditions()
    {
        MatchCollection said = Fits().Matches(s_page);
        Assert.IsNotEmpty(said);
        Findings.AssertNone(said.Where(match => !match.Value.Contains("condition", StringComparison.Ordinal))
            .Select(match => match.Value));
    }

    // A pin that nothing is connected to floats; and a reset in the middle of a deployment would be a riddle.
    [TestMethod]
    public void Pages_agree_on_the_pin_of_the_vacuum_and_on_the_jumper()
    {
        Page flashing = Page.Read("firmware/README.md");
        Assert.DoesNotContain("leave it open", flashing.Text);
        Assert.Contains("jumper JP1", flashing.Text);
        Assert.Contains("Pull the jumper JP1 before you flash", Page.Read("hardware/circuits/README.md").Text);
    }

    [GeneratedRegex(@"\*fits\*.{0,40}", RegexOptions.Singleline, 1000)]
    private static partial Regex Fits();
}
