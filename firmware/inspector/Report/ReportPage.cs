using System.Net;
using System.Text;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Spectrum;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Charts;
using ScottPlot;

namespace NanoDustSwitch.Inspector.Report;

/// <summary>One page about recordings: verdict, figures, a cycle, the spectrum, the swing over time. It needs nothing beside itself.</summary>
internal sealed class ReportPage
{
    private const int LongestTimeline = 60;
    private const int MostHarmonics = 13;

    private const string Style = """
        body { font: 1rem/1.45 system-ui, sans-serif; color: #1a1a1a; background: #fff; max-width: 46rem; margin: 0 auto; padding: 0.8rem; }
        h1 { font-size: 1.35rem; margin: 0.2rem 0; overflow-wrap: anywhere; }
        h2 { font-size: 1.1rem; margin: 1.6rem 0 0.4rem; overflow-wrap: anywhere; }
        p { margin: 0.4rem 0; overflow-wrap: anywhere; }
        .verdict { font-size: 1.1rem; border-left: 0.35rem solid #009e73; padding: 0.3rem 0.7rem; background: #f1f8f5; }
        .verdict.bad { border-color: #d55e00; background: #fdf3ec; }
        figure { margin: 0.6rem 0; }
        figcaption { color: #444; font-size: 0.9rem; }
        svg { display: block; width: 100%; height: auto; }
        svg text { font-family: system-ui, sans-serif; }
        i { font-style: normal; font-weight: 600; border-bottom: 0.2rem solid; }
        .wide { overflow-x: auto; }
        table { border-collapse: collapse; font-size: 0.95rem; }
        th, td { text-align: right; padding: 0.2rem 0.6rem 0.2rem 0; border-bottom: 1px solid #ddd; vertical-align: top; }
        th:first-child, td:first-child, th.text, td.text { text-align: left; }
        pre { background: #f3f3f3; padding: 0.6rem; overflow-x: auto; }
        """;

    private readonly StringBuilder _body = new();

    /// <summary>Initializes a new instance of the <see cref="ReportPage"/> class.</summary>
    /// <param name="title">Its title.</param>
    public ReportPage(string title)
    {
        Title = title;
        _body.AppendLine($"<h1>{Plain(title)}</h1>");
    }

    /// <summary>Gets the title.</summary>
    public string Title { get; }

    /// <summary>Adds the verdict.</summary>
    /// <param name="text">The verdict.</param>
    /// <param name="isGood">Whether all is well.</param>
    public void AddVerdict(string text, bool isGood) => _body.AppendLine($"<p class=\"verdict{(isGood ? "" : " bad")}\">{Plain(text)}</p>");

    /// <summary>Adds a paragraph.</summary>
    /// <param name="text">Its text.</param>
    public void AddText(string text) => _body.AppendLine($"<p>{Plain(text)}</p>");

    /// <summary>Adds a heading.</summary>
    /// <param name="text">Its text.</param>
    public void AddHeading(string text) => _body.AppendLine($"<h2>{Plain(text)}</h2>");

    /// <summary>Adds lines to be copied.</summary>
    /// <param name="lines">The lines.</param>
    public void AddLines(IEnumerable<string> lines) => _body.AppendLine($"<pre>{Plain(string.Join('\n', lines))}</pre>");

    /// <summary>Adds a table.</summary>
    /// <param name="header">The words above its columns.</param>
    /// <param name="rows">Its rows.</param>
    /// <param name="isText">Whether its last column is text and not figures.</param>
    public void AddTable(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string>> rows, bool isText = false)
    {
        _body.AppendLine("<div class=\"wide\"><table>");
        _body.AppendLine($"<tr>{Row(header, "th")}</tr>");
        foreach (IReadOnlyList<string> row in rows)
        {
            _body.AppendLine($"<tr>{Row(row, "td")}</tr>");
        }

        _body.AppendLine("</table></div>");

        string Row(IReadOnlyList<string> cells, string tag) =>
            string.Concat(cells.Select((cell, i) => $"<{tag}{(isText && i == cells.Count - 1 ? " class=\"text\"" : "")}>{Plain(cell)}</{tag}>"));
    }

    /// <summary>Adds all about a recording: figures, swing, cycle, spectrum, timeline, settings.</summary>
    /// <param name="choices">The settings it was replayed with.</param>
    /// <param name="runs">The replay with each.</param>
    public void AddReplay(IReadOnlyList<SettingChoice> choices, IReadOnlyList<ReplayRun> runs)
    {
        ReplaySource source = runs[0].Source;
        AddText($"{source.Seconds:0.00} s: {source.Understood}");
        AddHeading("What the switch makes of it");
        AddTable(["", .. choices.Select(choice => choice.Title)], ReplayReport.Rows.Select(row => (IReadOnlyList<string>)[row.Name, .. runs.Select(row.Value)]));
        for (int i = 0; i < runs.Count; i++)
        {
            AddFigure(
                ReportFigure.Swing(runs[i]),
                $"Swing over time{(runs.Count > 1 ? $", {choices[i].Title}" : "")}, as the rms current of a sine",
                (ChartStyle.Blue, "swing"),
                (ChartStyle.Vermilion, "start level"),
                (ChartStyle.Black, "stop level"),
                (ChartStyle.Green, "vacuum on"));
        }

        AddSpectrum(MainsSpectrum.Of(source.Wave, source.Shapes));
        AddHeading("Timeline" + (runs.Count > 1 ? $", {choices[^1].Title}" : ""));
        AddTable(["s", "what"], runs[^1].Timeline.Take(LongestTimeline).Select(entry => (IReadOnlyList<string>)[$"{entry.Time / 1e6:0.00}", entry.Text]), isText: true);
        AddHeading("Settings");
        SettingId[] ids = [.. Enumerable.Range(0, SettingsTable.Count).Select(i => (SettingId)i)];
        AddTable(
            ["", .. choices.Select(choice => choice.Title)],
            ids.Select(id => (IReadOnlyList<string>)[SettingsTable.Row(id).Name, .. choices.Select(choice => FirmwareText.Of(id, choice.Values[id]))]));
    }

    /// <inheritdoc/>
    public override string ToString() => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>{Plain(Title)}</title>
        <style>
        {Style}
        </style>
        </head>
        <body>
        {_body}<p><small>nanoDustSwitch {Switch.Version}</small></p>
        </body>
        </html>

        """;

    private static string Plain(string text) => WebUtility.HtmlEncode(text);

    private void AddSpectrum(MainsSpectrum spectrum)
    {
        AddHeading("The current itself");
        if (!spectrum.IsFound)
        {
            AddText("There is no current of the mains' frequency in it that stands out of the noise.");
            return;
        }

        string slice = spectrum.IsOfBuckets ? " The board sends means of 2.5 ms: harmonics above 200 Hz are not in them but fold back, so that those below are about right only." : "";
        AddText($"{spectrum.Hertz:0.00} Hz, {spectrum.Amperes[0]:0.00} A rms at that frequency, all harmonics together {spectrum.Distortion * 100:0.#} % of it; from {spectrum.Seconds:0.00} s at {spectrum.From:0.00} s.{slice}");
        AddFigure(
            ReportFigure.Cycle(spectrum),
            $"A cycle: {spectrum.Cycles:0} cycles laid over each other",
            (ChartStyle.Sky, spectrum.IsOfBuckets ? "means of 2.5 ms" : "readings"),
            (ChartStyle.Vermilion, "fundamental and harmonics"));
        AddFigure(ReportFigure.Lines(spectrum), "Spectrum", (ChartStyle.Blue, "the current"), (ChartStyle.Vermilion, "fundamental and harmonics"));
        AddTable(
            ["harmonic", "Hz", "A rms", "%"],
            spectrum.Amperes.Take(MostHarmonics).Select((ampere, i) => (IReadOnlyList<string>)[$"{i + 1}", $"{(i + 1) * spectrum.Hertz:0.0}", $"{ampere:0.000}", $"{100 * ampere / spectrum.Amperes[0]:0.0}"]));
    }

    private void AddFigure(string svg, string caption, params (Color Color, string Name)[] keys)
    {
        // The drawing's own head has no place inside a page; it is as wide as the page lets it.
        int begin = svg.IndexOf('>', svg.IndexOf("<svg", StringComparison.Ordinal));
        string box = $"<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" role=\"img\" aria-label=\"{Plain(caption)}\" viewBox=\"0 0 {ReportFigure.Width} {ReportFigure.Height}\"";
        _body.AppendLine($"<figure>{box}{svg[begin..].TrimEnd()}<figcaption>{Plain(caption)}: {string.Join(", ", keys.Select(key => $"<i style=\"border-color:{key.Color.ToHex()}\">{Plain(key.Name)}</i>"))}</figcaption></figure>");
    }
}
