using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Report;
using NanoDustSwitch.Simulator.Pages;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Tables;
using PuppeteerSharp;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>
/// The report in a real browser with a telephone's screen, without scripts of its own and without a network. Skipped
/// where there is no Chromium.
/// </summary>
[TestClass]
public sealed class ReportPageTests
{
    private const int PhoneWidth = 390;
    private const int PhoneHeight = 844;
    private const double LeastTextPixels = 12;

    private static readonly string[] s_browsers = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public async Task It_reads_on_a_telephone_and_asks_for_nothing()
    {
        string? browserPath = Array.Find(s_browsers, File.Exists);
        if (browserPath is null)
        {
            Assert.Inconclusive("there is no Chromium on this machine");
        }

        BoardRecording recording = BoardRecording.Parse(
            ShopRecorder.Record(ShortDay.Tool(ToolKind.Universal, 6)).Split('\n'),
            "a rather long name of a <recording> & more.csv");
        IReadOnlyList<SettingChoice> choices = SettingChoice.Of(recording, ["start-at=300mA"]);
        ReplayRun[] runs = [.. choices.Select(choice => new ReplayRun(recording, choice.Values).Run(_ => { }))];
        HtmlPage page = ReportPage.Of(choices, runs);
        string folder = Directory.CreateTempSubdirectory().FullName;
        string file = Path.Combine(folder, "report.html");
        await File.WriteAllTextAsync(file, page.ToString());
        try
        {
            await Look(browserPath, file, Path.Combine(folder, "browser"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [TestMethod]
    public void A_quiet_line_has_no_spectrum_and_says_so()
    {
        Random random = new(3);
        float[] counts = [.. Enumerable.Range(0, 4000).Select(_ => (float)Math.Round(1576 + (8 * (random.NextDouble() - 0.5))))];
        TableSource source = new("quiet", new TableReadings(counts, true, 2000, ""), 2, 1);
        HtmlPage page = new("quiet");
        ReportPage.AddReplay(
            page, [new SettingChoice("defaults", source.Settings)], [new ReplayRun(source, source.Settings).Run(_ => { })]);
        StringAssert.Contains(page.ToString(), "There is no current of the mains");
    }

    private async Task Look(string browserPath, string file, string profile)
    {
        await using IBrowser browser = await Puppeteer.LaunchAsync(new LaunchOptions
        {
            Headless = true,
            ExecutablePath = browserPath,
            UserDataDir = profile,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync",
            ],
        });
        await using PuppeteerSharp.IPage tab = await browser.NewPageAsync();
        List<string> asked = [];
        tab.Request += (_, request) => asked.Add(request.Request.Url);
        List<string> troubles = [];
        tab.Console += (_, message) => troubles.Add(message.Message.Text);
        tab.PageError += (_, error) => troubles.Add(error.Message);
        await tab.SetViewportAsync(new ViewPortOptions
        {
            Width = PhoneWidth,
            Height = PhoneHeight,
            IsMobile = true,
            HasTouch = true,
            DeviceScaleFactor = 2,
        });
        await tab.GoToAsync("file://" + file);
        if (Environment.GetEnvironmentVariable("DUST_SCREENSHOT") is { } screenshot)
        {
            await tab.ScreenshotAsync(screenshot, new ScreenshotOptions { FullPage = true });
        }

        Assert.AreEqual($"file://{file}", string.Join(' ', asked), "it asks for nothing beside itself");
        Assert.AreEqual("", string.Join(' ', troubles));
        Assert.AreEqual(
            "a rather long name of a <recording> & more.csv", await tab.EvaluateExpressionAsync<string>("document.title"));
        Assert.AreEqual(
            PhoneWidth, await tab.EvaluateExpressionAsync<int>("document.documentElement.scrollWidth"), "it scrolls sideways");
        Assert.AreEqual(
            4,
            await tab.EvaluateExpressionAsync<int>("document.querySelectorAll('figure svg').length"),
            "swing twice, a cycle, the spectrum");
        Assert.AreEqual(
            0,
            await tab.EvaluateExpressionAsync<int>(
                "document.querySelectorAll('script, link, img, iframe, [src], [href]:not([href^=\"#\"])').length"));
        double[] widths = await tab.EvaluateExpressionAsync<double[]>(
            "[...document.querySelectorAll('figure svg')].map(one => one.getBoundingClientRect().width)");
        Assert.IsTrue(Array.TrueForAll(widths, width => width is > 300 and <= PhoneWidth), string.Join(' ', widths));
        double least = await tab.EvaluateExpressionAsync<double>(
            "Math.min(...[...document.querySelectorAll('svg text')].map(one => parseFloat(getComputedStyle(one).fontSize) * "
            + "one.ownerSVGElement.getBoundingClientRect().width / one.ownerSVGElement.viewBox.baseVal.width), "
            + "...[...document.querySelectorAll('p, td, th, figcaption, small')].map(one => "
            + "parseFloat(getComputedStyle(one).fontSize)))");
        TestContext.WriteLine($"smallest text {least:0.0} pixels high");
        Assert.IsGreaterThan(LeastTextPixels, least);
        string shown = await tab.EvaluateExpressionAsync<string>(
            "document.querySelector('.verdict').innerText + document.querySelector('table').innerText");
        StringAssert.Contains(shown, "The tool is seen");
        StringAssert.Contains(shown, "vacuum commanded at");
    }
}
