using NanoDustSwitch.Drawing.Netlists;
using NanoDustSwitch.Sizing.Building;
using NanoDustSwitch.Sizing.Changes;

namespace NanoDustSwitch.SizingTests;

/// <summary>An order's own folder: <c>--build</c>.</summary>
[TestClass]
public sealed class BuildTests
{
    private const string Thin = "18 AWG at the box";

    private static readonly Dictionary<string, (Advice Advice, Build Build, string Page, string Drawing)> s_made = [];

    public static IEnumerable<object[]> Fitting =>
        WorkedCases.All.Where(each => each.ExitCode is 0 or 3).SelectMany(Variants).Select(line => new object[] { line });

    [TestMethod]
    [DynamicData(nameof(Fitting))]
    public void All_that_the_verdict_rests_on_is_in_the_folder_and_nothing_else(string line)
    {
        (Advice advice, Build build, string page, string drawing) = Make(line);
        NoFindings(new OrderRules(advice, build, page, drawing).Findings());
    }

    // Each part once, in every order: its name in the drawing, its row in the list, its lines on label and sheet; and each
    // condition and each line to type.
    [TestMethod]
    [DynamicData(nameof(Fitting))]
    public void Whatever_is_taken_away_is_missed(string line)
    {
        (Advice advice, Build build, string page, string drawing) = Make(line);
        NoFindings(
        [
            .. build.Parts.Where(part => part.PartOf.Length == 0)
                .Where(part => !IsMissed(page, drawing.Replace($">{part.Name}<", "><", StringComparison.Ordinal)))
                .Select(part => $"{part.Name} was taken from the drawing"),
            .. TakenLines(page, SheetWords.OfSheet(advice.Judgement.Order, build)).Where(taken => !IsMissed(taken.Page, drawing))
                .Select(taken => $"taken away: {taken.Line}"),
        ]);
        bool IsMissed(string onPage, string drawn) => new OrderRules(advice, build, onPage, drawn).Findings().Any();
    }

    // What is taken away is missed, wherever it is taken from: a row of the list, a line of the label or the sheet, a name drawn.
    [TestMethod]
    [DataRow("\n| CB1 |", "\n| XX1 |", "CB1 is drawn and not listed")]
    [DataRow("equipment of 10 A\n", "\n", "'equipment of 10 A' is missing in Label")]
    [DataRow("CB1 fitted: 10 A", "", "'fitted: 10 A' is missing in Commissioning sheet")]
    [DataRow("motor AC-3 or AC-7b 9 A or 1/2 hp", "", "is missing in Label")]
    [DataRow("of class A (4 to 6 mA) before it", "", "'class A (4 to 6 mA)' is missing in Label")]
    [DataRow("\nstart-delay surge\n", "\n", "'start-delay surge' is missing in Settings to type")]
    [DataRow("| K1 |", "| F2 |", "F2 is for another order")]
    public void What_is_taken_away_from_the_page_is_missed(string text, string changed, string finding)
    {
        (Advice advice, Build build, string page, string drawing) = Make(WorkedCases.All.Single(each => each.Name == Thin).Line);
        Assert.Contains(text, page);
        page = page.Replace(text, changed, StringComparison.Ordinal);
        string[] findings = [.. new OrderRules(advice, build, page, drawing).Findings()];
        Assert.IsTrue(
            findings.Any(each => each.Contains(finding, StringComparison.Ordinal)), string.Join('\n', findings));
    }

    [TestMethod]
    [DataRow(">CB1<", "CB1 is not drawn")]
    [DataRow("10 A,", "'10 A,' is missing in drawing")]
    [DataRow("one pole", "'one pole' is missing in drawing")]
    [DataRow("18AWG", "'cord 18AWG' is missing in drawing")]
    public void What_is_taken_away_from_the_drawing_is_missed(string text, string finding)
    {
        (Advice advice, Build build, string page, string drawing) = Make(WorkedCases.All.Single(each => each.Name == Thin).Line);
        string[] lines = [.. new OrderRules(advice, build, page, drawing.Replace(text, "", StringComparison.Ordinal)).Findings()];
        Assert.IsTrue(lines.Any(each => each.Contains(finding, StringComparison.Ordinal)), string.Join('\n', lines));
    }

    [TestMethod]
    public void The_printed_page_has_the_same_rows_and_the_drawing()
    {
        string folder = Directory.CreateTempSubdirectory("dust-build-").FullName;
        try
        {
            string line = WorkedCases.All.Single(each => each.Name == Thin).Line;
            Assert.AreEqual(3, new Terminal($"{line} --build {folder}").ExitCode);
            AngleSharp.Html.Dom.IHtmlDocument html = new AngleSharp.Html.Parser.HtmlParser()
                .ParseDocument(File.ReadAllText(Path.Combine(folder, BuildFolder.Html)));
            string page = File.ReadAllText(Path.Combine(folder, BuildFolder.Markdown));
            Assert.IsNotNull(html.QuerySelector("figure svg"));
            Assert.AreEqual(
                page.Split('\n').Count(each => each.StartsWith("| ", StringComparison.Ordinal)),
                html.QuerySelectorAll("tr").Length);
            Assert.StartsWith("<svg", File.ReadAllText(Path.Combine(folder, OrderPage.DrawingFile)));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [TestMethod]
    public void What_does_not_fit_has_no_folder()
    {
        string folder = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        Terminal terminal = new(
            "--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --cord 8m/14AWG "
            + "--sensor transformer-100A --build " + folder);
        Assert.AreEqual(1, terminal.ExitCode);
        Assert.Contains("No folder was written", terminal.Shown);
        Assert.IsFalse(Directory.Exists(folder));
    }

    [TestMethod]
    [DataRow("--sensor transformer-100A --build /dev/null/x", "--build /dev/null/x cannot be written")]
    [DataRow("--sensor hall-20A --build x", "allowed is transformer-100A")]
    [DataRow("--sensor transformer-100A --ready-made --contactor", "the unit has its own contact")]
    public void A_folder_that_cannot_be_is_one_sentence(string options, string says)
    {
        string cord = options.Contains("--ready-made", StringComparison.Ordinal) ? "" : "--cord 2m/14AWG ";
        Terminal terminal = new($"--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A {cord}{options}");
        Assert.AreEqual(2, terminal.ExitCode);
        Assert.Contains(says, terminal.Error);
    }

    // The page without one line: each of list, label, settings and conditions, and those of the sheet with the words.
    private static IEnumerable<(string Line, string Page)> TakenLines(string page, IEnumerable<string> onSheet)
    {
        string[] whole = ["The verdict rests on", "Parts", "Label", "Settings to type"];
        string[] lines = page.Split('\n');
        string section = "";
        for (int i = 0; i < lines.Length; i++)
        {
            section = lines[i].StartsWith("## ", StringComparison.Ordinal) ? lines[i][3..] : section;
            bool isHead = lines[i].Length < 4 || lines[i].StartsWith('#') || lines[i].StartsWith("|---", StringComparison.Ordinal)
                || (i + 1 < lines.Length && lines[i + 1].StartsWith("|---", StringComparison.Ordinal));
            bool isRow = lines[i].StartsWith('|') || section is "Label" or "Settings to type";
            bool isAsked = section == "Commissioning sheet"
                && onSheet.Any(words => lines[i].Contains(words, StringComparison.Ordinal));
            if (!isHead && isRow && (whole.Contains(section) || isAsked))
            {
                yield return (lines[i], string.Join('\n', lines.Where((_, k) => k != i)));
            }
        }
    }

    // Every case with a box of its own also with a contactor.
    private static IEnumerable<string> Variants(WorkedCase each) =>
        each.Line.Contains("--ready-made", StringComparison.Ordinal) ? [each.Line] : [each.Line, each.Line + " --contactor"];

    private static (Advice Advice, Build Build, string Page, string Drawing) Make(string line)
    {
        if (!s_made.TryGetValue(line, out (Advice Advice, Build Build, string Page, string Drawing) made))
        {
            Judged judged = new(line);
            Advice advice = new(judged.Judgement, judged.Trials);
            OrderPage order = new(advice);
            Simulator.Pages.MarkdownPage page = new(order.Title);
            order.Write(page);
            s_made[line] = made = (advice, order.Build, page.ToString(), order.Drawing);
        }

        return made;
    }

    private static void NoFindings(IEnumerable<string> findings)
    {
        string[] all = [.. findings];
        Assert.IsEmpty(all, string.Join('\n', all));
    }
}
