using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using SkiaSharp;

namespace NanoDustSwitch.SizingTests;

/// <summary>The report page: needs nothing from elsewhere, and its pictures show what they should.</summary>
[TestClass]
public sealed class ReportTests
{
    private const string OneCircuit =
        "--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --cord 8m/14AWG --sensor transformer-100A";
    private const string DataImage = "data:image/png;base64,";

    [TestMethod]
    public void The_page_takes_nothing_from_elsewhere()
    {
        (string text, IHtmlDocument page) = Page(OneCircuit);
        foreach (IAttr attribute in page.All.SelectMany(element => element.Attributes)
            .Where(attribute => attribute.Name is "src" or "href" or "srcset" or "data" or "action" or "poster"))
        {
            StringAssert.StartsWith(attribute.Value, DataImage, StringComparison.Ordinal);
        }

        Assert.IsEmpty(page.QuerySelectorAll("script, link, iframe, object, embed, base, a, form"));
        string outside = text.Replace(DataImage, "");
        foreach (string sign in new[] { "http:", "https:", "//", "url(", "@import" })
        {
            Assert.IsFalse(Words(outside).Contains(sign, StringComparison.Ordinal), sign);
        }
    }

    [TestMethod]
    public void The_page_says_what_the_terminal_says()
    {
        (_, IHtmlDocument page) = Page(OneCircuit);
        string text = string.Join(' ', page.Body!.TextContent.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Judged judged = new(OneCircuit);
        foreach (string working in judged.Judgement.Sections.SelectMany(section => section.Findings)
            .Select(finding => finding.Working))
        {
            StringAssert.Contains(text, working, StringComparison.Ordinal);
        }

        StringAssert.Contains(text, "Does not fit as given.", StringComparison.Ordinal);
        StringAssert.Contains(text, "--vacuum-circuit 15A", StringComparison.Ordinal);
        StringAssert.Contains(text, "Local codes and licensed practice come first", StringComparison.Ordinal);
        Assert.IsNotNull(page.QuerySelector("meta[name=viewport]"));
    }

    [TestMethod]
    [DataRow(OneCircuit, 1, new[] { "D55E00", "CC79A7", "009E73", "0072B2" })]
    [DataRow(OneCircuit + " --vacuum-circuit 15A", 2, new[] { "D55E00", "0072B2" })]
    public void The_pictures_show_curve_and_starts(string line, int circuits, string[] colors)
    {
        (_, IHtmlDocument page) = Page(line);
        IElement[] images = [.. page.QuerySelectorAll("img")];
        Assert.HasCount(2 * circuits, images);
        Assert.IsTrue(images.All(image => image.GetAttribute("alt")!.Length > 20));
        using SKBitmap picture = SKBitmap.Decode(Convert.FromBase64String(images[0].GetAttribute("src")![DataImage.Length..]));
        foreach (string color in colors)
        {
            SKColor wanted = SKColor.Parse(color);
            Assert.IsGreaterThan(800, picture.Pixels.Count(pixel => pixel == wanted), color);
        }
    }

    private static (string Text, IHtmlDocument Page) Page(string line)
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".html");
        try
        {
            Assert.AreNotEqual(2, new Terminal($"{line} --report {file}").ExitCode);
            string text = File.ReadAllText(file);
            return (text, new HtmlParser().ParseDocument(text));
        }
        finally
        {
            File.Delete(file);
        }
    }

    // Without the pictures' own letters.
    private static string Words(string text) => string.Concat(text.Split('"').Where(part => part.Length < 10_000));
}
