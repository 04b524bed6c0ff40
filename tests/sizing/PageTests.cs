using System.Text;
using System.Text.RegularExpressions;

namespace NanoDustSwitch.SizingTests;

/// <summary>
/// hardware/sizing/README.md: its examples show what the program really prints, and its table is that of the worked cases. After
/// a wanted change the page as it would have to be is in the file that the message names: read it, then put it in place of the
/// old one.
/// </summary>
[TestClass]
public sealed partial class PageTests
{
    private const string Command = "$ dotnet run --project hardware/sizing -- ";

    [TestMethod]
    public void The_page_shows_what_the_program_prints()
    {
        string page = Repository.ReadText("hardware/sizing/README.md");
        int examples = 0;
        string expected = Example().Replace(page, match =>
        {
            examples++;
            string line = string.Join(' ', Terminal.Words(match.Groups["line"].Value.Replace("\\\n", " ")));
            Terminal terminal = new(line);
            return $"```\n{Command}{match.Groups["line"].Value}\n{terminal.Shown.TrimStart()}{terminal.Error}```";
        });
        expected = CaseTable().Replace(expected, "<!-- cases -->\n" + Table() + "<!-- end of cases -->");
        Assert.IsGreaterThanOrEqualTo(3, examples);
        StringAssert.Contains(expected, "<!-- end of cases -->", StringComparison.Ordinal);
        if (page != expected)
        {
            string received = Path.Combine(AppContext.BaseDirectory, "README.received.md");
            File.WriteAllText(received, expected);
            Assert.Fail($"The page is not what the program prints; compare {received} with hardware/sizing/README.md.");
        }
    }

    private static string Table()
    {
        StringBuilder table = new("| case | typed | exit | figures that decide, and where they are from |\n|---|---|---|---|\n");
        foreach (WorkedCase each in WorkedCases.All)
        {
            string figures = string.Join(
                "<br>", each.Figures.Select(figure => $"{figure.What}: {string.Join(", ", figure.Figures)} ({figure.Source})"));
            table.Append(
                $"| {each.Name} | `{each.Line.Replace(" --sensor transformer-100A", "")}` | {each.ExitCode} | "
                + $"{(figures.Length > 0 ? figures : "one sentence (practice: such a figure is no rating)")} |\n");
        }

        return table.ToString();
    }

    [GeneratedRegex(
        "```\n\\$ dotnet run --project hardware/sizing -- (?<line>[^\n]*(\\\\\n[^\n]*)*)\n(?<shown>[^`]*)```",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 5000)]
    private static partial Regex Example();

    [GeneratedRegex("<!-- cases -->\n[^\0]*<!-- end of cases -->", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex CaseTable();
}
