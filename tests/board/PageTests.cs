using System.Reflection;
using System.Text.RegularExpressions;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Esp32;

namespace NanoDustSwitch.BoardTests;

/// <summary>What firmware/README.md says is so.</summary>
[TestClass]
public partial class PageTests : BoardTest
{
    private static readonly string s_page = Repository.ReadText("firmware/README.md");

    [TestMethod]
    public void TheTableOfPinsIsThePlan()
    {
        Dictionary<string, int> table = [];
        foreach (Match row in PinRow().Matches(s_page))
        {
            table.Add(row.Groups["pinName"].Value, int.Parse(row.Groups["pin"].Value));
            if (row.Groups["channel"].Success)
            {
                table.Add(row.Groups["channelName"].Value, int.Parse(row.Groups["channel"].Value));
            }
        }

        FieldInfo[] fields = typeof(PinPlan).GetFields(BindingFlags.Public | BindingFlags.Static);
        string[] plan = [.. fields.Select(field => $"{field.Name} {field.GetRawConstantValue()}")];
        CollectionAssert.AreEquivalent(plan, table.Select(entry => $"{entry.Key} {entry.Value}").ToArray());
    }

    [TestMethod]
    public void TheHeartbeatIsThatOfTheMeter()
    {
        Boot();
        Answer("vacuum on");
        int changes = Chip.Relay.Changes;
        int high = 0;
        for (int i = 0; i < 1000; i++)
        {
            Run(1);
            high += Chip.Relay.Level ? 1 : 0;
        }

        int hertz = (int)(1000000 / (2 * Bucket.Microseconds));
        Assert.Contains($"about {hertz} Hz", s_page, StringComparison.Ordinal);
        Assert.Contains("about 1.65 V DC (half of 3.3 V)", s_page, StringComparison.Ordinal);
        Assert.IsInRange((2 * hertz) - 4, (2 * hertz) + 4, Chip.Relay.Changes - changes);
        Assert.IsInRange(450, 550, high);
    }

    [TestMethod]
    public void TheConsoleAnswersAsThePageShows()
    {
        Boot();
        AssertOnPage(Chip.Serial.TakeSent());
        AssertOnPage("> status\n" + Answer("status"));
        string sheet = Answer("test", 3000);
        Chip.ButtonLine = 0;
        Run(200);
        Chip.ButtonLine = Chip.ButtonUp;
        Run(4500);
        AssertOnPage(sheet + Chip.Serial.TakeSent());
    }

    // Every sentence that the troubleshooting table begins with "told off" is one that the switch says.
    [TestMethod]
    public void EveryFaultOnThePageHasItsName()
    {
        string[] names = [.. Enum.GetValues<Fault>().Select(fault => "told off: " + Firmware.FaultText.Name(fault))];
        foreach (Match match in HeldOff().Matches(s_page))
        {
            Assert.Contains(match.Groups["said"].Value, names);
        }
    }

    // Figures differ from board to board, and the version from release to release; the words do not.
    private static void AssertOnPage(string said)
    {
        said = said.Replace(ProductVersion.Text, "X.Y.Z", StringComparison.Ordinal);
        string words = WithoutFigures(
            Regex.Replace(said.Trim(), @"\s*\r?\n\s*", "\n", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Contains(words, WithoutFigures(s_page), StringComparison.Ordinal);
    }

    private static string WithoutFigures(string text) => Figure().Replace(text, "#");

    [GeneratedRegex(
        @"^\| GPIO(?<pin>\d+)(?:, channel (?<channel>\d+))? \| `(?<pinName>\w+)`(?:, `(?<channelName>\w+)`)? \|",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex PinRow();

    [GeneratedRegex(@"\d[\d.:]*\d|\d", RegexOptions.None, 1000)]
    private static partial Regex Figure();

    [GeneratedRegex("`(?<said>told off: [^`]+)`", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex HeldOff();
}
