using System.Net;
using System.Text;
using NanoDustSwitch.Detection;
using ScottPlot;

namespace NanoDustSwitch.Simulator.Pages;

/// <summary>A page for a screen of any width that needs nothing beside itself. All texts are plain ones.</summary>
internal sealed class HtmlPage : IPage
{
    private const string Style = """
        body { font: 1rem/1.45 system-ui, sans-serif; color: #1a1a1a; background: #fff; }
        body { max-width: 46rem; margin: 0 auto; padding: 0.8rem; }
        h1 { font-size: 1.35rem; margin: 0.2rem 0; }
        h2 { font-size: 1.1rem; margin: 1.6rem 0 0.4rem; border-bottom: 1px solid #bbb; }
        h1, h2, p, li, dt, dd { overflow-wrap: anywhere; }
        p { margin: 0.4rem 0; }
        .verdict { font-size: 1.1rem; border-left: 0.35rem solid #009e73; padding: 0.3rem 0.7rem; background: #f1f8f5; }
        .verdict.bad { border-color: #d55e00; background: #fdf3ec; }
        figure { margin: 0.6rem 0; }
        figcaption { color: #444; font-size: 0.9rem; }
        svg, img { display: block; width: 100%; height: auto; }
        svg text { font-family: system-ui, sans-serif; }
        i { font-style: normal; font-weight: 600; border-bottom: 0.2rem solid; }
        .wide { overflow-x: auto; }
        table { border-collapse: collapse; font-size: 0.95rem; }
        th, td { text-align: right; padding: 0.2rem 0.6rem 0.2rem 0; border-bottom: 1px solid #ddd; vertical-align: top; }
        th:first-child, td:first-child, th.text, td.text { text-align: left; }
        .form th, .form td { text-align: left; border: 1px solid #999; padding: 0.25rem 0.4rem; }
        @media print { body { max-width: none; font-size: 0.8rem; } tr { break-inside: avoid; } }
        pre { background: #f3f3f3; padding: 0.6rem; white-space: pre-wrap; overflow-wrap: anywhere; }
        dl { margin: 0; }
        dt { font-weight: 600; margin-top: 0.5rem; }
        dd { margin: 0; }
        dt b { display: inline-block; min-width: 3rem; margin-right: 0.4rem; color: #00694d; }
        .mind b { color: #7a5200; }
        .bad b, .bad dd { color: #a33e00; }
        dd small { color: #555; font-size: 0.9rem; }
        """;

    // So wide a drawing's letters are as large as the page's.
    private const double TextSize = 1.15;

    private readonly string _title;
    private readonly StringBuilder _body = new();

    /// <summary>Initializes a new instance of the <see cref="HtmlPage"/> class.</summary>
    /// <param name="title">What the browser's tab shows.</param>
    /// <param name="heading">What stands at the head of the page; the title where it is null.</param>
    public HtmlPage(string title, string? heading = null)
    {
        _title = title;
        Add($"<h1>{Plain(heading ?? title)}</h1>");
    }

    /// <summary>Adds the verdict.</summary>
    /// <param name="text">The verdict.</param>
    /// <param name="isGood">Whether all is well.</param>
    public void AddVerdict(string text, bool isGood) =>
        Add($"<p class=\"verdict{(isGood ? "" : " bad")}\">{Plain(text)}</p>");

    /// <summary>Adds a paragraph.</summary>
    /// <param name="text">Its text.</param>
    public void AddText(string text) => Add($"<p>{Plain(text)}</p>");

    /// <summary>Adds a heading.</summary>
    /// <param name="text">Its text.</param>
    public void AddHeading(string text) => Add($"<h2>{Plain(text)}</h2>");

    /// <summary>Adds lines to be copied.</summary>
    /// <param name="lines">The lines.</param>
    public void AddLines(IEnumerable<string> lines) => Add($"<pre>{Plain(string.Join('\n', lines))}</pre>");

    /// <summary>Adds a list.</summary>
    /// <param name="items">Its items, a paragraph each.</param>
    public void AddList(IEnumerable<string> items) =>
        Add($"<ul>{string.Concat(items.Select(item => $"\n<li>{Plain(item)}</li>"))}\n</ul>");

    /// <summary>Adds findings.</summary>
    /// <param name="findings">
    /// Of each its look (good, mind or bad), the mark before it, what was looked at, what was found, and where that comes from.
    /// </param>
    public void AddFindings(IEnumerable<(string Look, string Mark, string What, string Text, string Source)> findings) =>
        Add($"<dl>{string.Concat(findings.Select(one =>
            $"\n<div class=\"{one.Look}\"><dt><b>{Plain(one.Mark)}</b>{Plain(one.What)}</dt>"
            + $"<dd>{Plain(one.Text)} <small>({Plain(one.Source)})</small></dd></div>"))}\n</dl>");

    /// <summary>Adds a table.</summary>
    /// <param name="header">The words above its columns.</param>
    /// <param name="rows">Its rows.</param>
    /// <param name="isText">Whether its last column is text and not figures.</param>
    public void AddTable(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string>> rows, bool isText = false)
    {
        string body = string.Concat(rows.Select(row => Row(row, "td")));
        Add($"<div class=\"wide\"><table>\n{Row(header, "th")}{body}</table></div>");

        string Row(IReadOnlyList<string> cells, string tag) => $"<tr>{string.Concat(cells.Select((cell, i) =>
            $"<{tag}{(isText && i == cells.Count - 1 ? " class=\"text\"" : "")}>{Plain(cell)}</{tag}>"))}</tr>\n";
    }

    /// <inheritdoc/>
    public void AddForm(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string>> rows)
    {
        string body = string.Concat(rows.Select(row => Row(row, "td")));
        Add($"<div class=\"wide form\"><table>\n{Row(header, "th")}{body}</table></div>");

        static string Row(IReadOnlyList<string> cells, string tag) =>
            $"<tr>{string.Concat(cells.Select(cell => $"<{tag}>{Plain(cell)}</{tag}>"))}</tr>\n";
    }

    /// <inheritdoc/>
    public void AddDrawing(string svg, int width, int height, string file, string caption) =>
        AddFigure(svg, width, height, $"{caption}; its letters are large enough in {file}, opened or printed by itself");

    /// <summary>Adds a drawing, as wide as the page lets it.</summary>
    /// <param name="svg">The drawing.</param>
    /// <param name="width">Its width in its own units.</param>
    /// <param name="height">Its height in its own units.</param>
    /// <param name="caption">What it shows.</param>
    /// <param name="keys">What its colours mean.</param>
    public void AddFigure(string svg, int width, int height, string caption, params (Color Color, string Name)[] keys)
    {
        // The drawing's own head has no place inside a page.
        int begin = svg.IndexOf('>', svg.IndexOf("<svg", StringComparison.Ordinal));
        string names = string.Join(
            ", ", keys.Select(key => $"<i style=\"border-color:{key.Color.ToHex()}\">{Plain(key.Name)}</i>"));
        Add("<figure><svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" role=\"img\" "
            + $"style=\"max-width:{width * TextSize:0}px\" aria-label=\"{Plain(caption)}\" "
            + $"viewBox=\"0 0 {width} {height}\"{svg[begin..].TrimEnd()}"
            + $"<figcaption>{Plain(caption)}{(keys.Length > 0 ? ": " : "")}{names}</figcaption></figure>");
    }

    /// <summary>Adds a picture, as wide as the page.</summary>
    /// <param name="png">The picture.</param>
    /// <param name="caption">What it shows, for those who do not see it.</param>
    public void AddPicture(byte[] png, string caption) =>
        Add($"<img alt=\"{Plain(caption)}\" src=\"data:image/png;base64,{Convert.ToBase64String(png)}\">");

    /// <inheritdoc/>
    public override string ToString() => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>{Plain(_title)}</title>
        <style>
        {Style}
        </style>
        </head>
        <body>
        {_body}<p><small>nanoDustSwitch {ProductVersion.Text}</small></p>
        </body>
        </html>

        """;

    private static string Plain(string text) => WebUtility.HtmlEncode(text);

    private void Add(string html) => _body.Append(html).Append('\n');
}
