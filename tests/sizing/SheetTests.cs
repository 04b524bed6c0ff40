using System.Text.RegularExpressions;
using NanoDustSwitch.Sizing.Building;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.SizingTests;

/// <summary>The sheet of an order asks for all that hardware/README.md has measured.</summary>
[TestClass]
public sealed partial class SheetTests
{
    private const string TwoBoxes =
        "--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --vacuum-circuit 15A --cord 2m/14AWG --sensor transformer-100A";

    private static readonly string s_page = Repository.ReadText("hardware/README.md");

    [TestMethod]
    public void Every_line_of_step_6_is_on_the_sheet()
    {
        string[] lines = [.. NumberedLine().Matches(s_page).Select(match => match.Groups["number"].Value)];
        Assert.HasCount(13, lines);
        string[] asked = [.. SheetOf(TwoBoxes).SelectMany(part => part.Rows).Select(row => row[0])];
        CollectionAssert.IsSubsetOf(lines, asked);
    }

    // The label has a current for the tool's outlet, for the vacuum's and, of one plug, for both; none that was not tested.
    [TestMethod]
    public void Every_current_of_the_label_has_its_heat_test_on_the_sheet()
    {
        const string OnePlug = "--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A --cord 2m/14AWG --sensor transformer-100A";
        string label = string.Join('\n', BoxLabel.Of(Judged.OrderOf(OnePlug)));
        string sheet = string.Join('\n', SheetOf(OnePlug).SelectMany(part => part.Rows).Select(row => row[1]));
        foreach ((string blank, string tested) in new[]
        {
            ("tool at most ______ A", "tool outlet alone: ______ A"),
            ("vacuum at most ______ A", "vacuum outlet alone: ______ A"),
            ("tool + vacuum together at most ______ A", "both: ______ A + ______ A"),
        })
        {
            Assert.Contains(blank, label);
            Assert.Contains($"an hour, {tested}", sheet);
        }

        Assert.Contains("the label carries the current that was tested, never more", s_page);
    }

    // VDE 0701-0702 (read): 0.3 ohm up to 5 m, 0.1 more for each further 7.5 m, never over 1; a metre for the outlet's own cord.
    [TestMethod]
    [DataRow("2m", "<= 0.3 Ω")]
    [DataRow("8m", "<= 0.4 Ω")]
    [DataRow("12m", "<= 0.5 Ω")]
    [DataRow("90m", "<= 1.0 Ω")]
    public void A_longer_cord_may_have_more_ohms(string length, string mustBe) => Assert.AreEqual(
        mustBe, SheetOf(TwoBoxes.Replace("2m", length)).SelectMany(part => part.Rows).First(row => row[0] == "1")[2]);

    private static IEnumerable<SheetPart> SheetOf(string line) => CommissioningSheet.Of(Judged.OrderOf(line), []);

    [GeneratedRegex(@"^\| (?<number>\d+) \|", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NumberedLine();
}
