using System.Net;
using System.Text;
using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Pages;

/// <summary>The judgement as one page that needs nothing else, for a screen of any width.</summary>
internal static class HtmlPage
{
    private const string Style =
        """
        body{font:16px/1.45 system-ui,sans-serif;color:#111;background:#fff;max-width:46rem;margin:0 auto;padding:0 1rem 2rem}
        h1{font-size:1.4rem}h2{font-size:1.1rem;margin:1.6rem 0 .4rem;border-bottom:1px solid #999}
        .verdict{font-weight:bold;padding:.6rem .8rem;border-left:.5rem solid}.yes{border-color:#009e73;background:#e8f6f1}.no{border-color:#d55e00;background:#fbeee6}
        dl{margin:0}dt{font-weight:600;margin-top:.5rem}dd{margin:0}.mark{display:inline-block;min-width:3.2rem}
        .fits .mark{color:#00694d}.mind .mark{color:#7a5200}.fails .mark{color:#a33e00}.fails dd{color:#a33e00}.source{color:#555;font-size:.9rem}
        img{width:100%;height:auto}pre,code{white-space:pre-wrap;overflow-wrap:anywhere;background:#f3f3f3}pre{padding:.6rem}
        """;

    /// <summary>Makes the page.</summary>
    /// <param name="advice">The judgement.</param>
    /// <param name="trials">The trials.</param>
    /// <returns>HTML.</returns>
    public static string Of(Advice advice, TrialBook trials)
    {
        Judgement judgement = advice.Judgement;
        Order order = judgement.Order;
        StringBuilder page = new();
        page.Append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n")
            .Append("<title>Dust switch: what goes together</title>\n<style>\n").Append(Style).Append("\n</style></head><body>\n")
            .Append($"<h1>Vacuum {Text(order.Vacuum.Nameplate)}, tool {Text(order.Tool.Nameplate)}, {Text(order.ToolCircuit.Supply.ToString())}</h1>\n")
            .Append($"<p class=\"verdict {(judgement.Fits ? "yes" : "no")}\">{Text(advice.Verdict)}</p>\n");
        if (!judgement.Fits)
        {
            page.Append($"<p>{Text(advice.Heading)}</p>\n");
            AddList(page, advice.Lines);
        }

        page.Append($"<p>Judged: <code>{Text(order.Options)}</code></p>\n");
        AddPictures(page, order, trials);
        foreach (Section section in judgement.Sections)
        {
            AddSection(page, section);
        }

        page.Append("<h2>To type at the box's console</h2>\n")
            .Append(judgement.HasSettings
                ? $"<pre>{Text(string.Join("\n", judgement.Lines.Append("save")))}</pre>\n<p>Then <code>teach</code> with the real tool.</p>\n"
                : "<p>None: teach would refuse this tool.</p>\n");
        page.Append("<h2>Before anything else</h2>\n");
        AddList(page, Cautions.All);
        return page.Append("</body></html>\n").ToString();
    }

    private static void AddSection(StringBuilder page, Section section)
    {
        page.Append($"<h2>{Text(section.Title)}</h2>\n<dl>\n");
        foreach (Finding finding in section.Findings)
        {
            (string name, string mark) = finding.Outcome switch { Outcome.Fits => ("fits", "ok"), Outcome.Mind => ("mind", "mind"), _ => ("fails", "NO") };
            page.Append($"<div class=\"{name}\"><dt><span class=\"mark\">{mark}</span>{Text(finding.What)}</dt>")
                .Append($"<dd>{Text(finding.Working)} <span class=\"source\">({Text(finding.Source.ToString())})</span></dd></div>\n");
        }

        page.Append("</dl>\n");
    }

    private static void AddPictures(StringBuilder page, Order order, TrialBook trials)
    {
        StartCourse delayed = trials.Start(order, 1, withDelay: true);
        if (order.OwnVacuumCircuit is { } own)
        {
            AddPicture(page, "Tool's circuit", new StartPicture(order.ToolCircuit, [new("tool", ChartStyle.Blue, [.. StartJudge.ToolOf(delayed)])]));
            AddPicture(page, "Vacuum's circuit", new StartPicture(own, [new("vacuum", ChartStyle.Green, [.. delayed.Points.Select(point => (point.Seconds, point.Vacuum))])]));
            return;
        }

        AddPicture(page, "The circuit", new StartPicture(order.ToolCircuit,
        [
            new("both at once", ChartStyle.Purple, [.. StartJudge.ToolOf(trials.Start(order, 1, withDelay: false))]),
            new("vacuum after the surge", ChartStyle.Green, [.. StartJudge.ToolOf(delayed)]),
            new("tool alone", ChartStyle.Blue, [.. StartJudge.ToolAlone(order)]),
        ]));
    }

    private static void AddPicture(StringBuilder page, string name, StartPicture picture)
    {
        page.Append($"<h2>{name}: starts against the breaker</h2>\n")
            .Append("<p>How long the circuit carries at least so much current. A line that reaches the orange band may trip the breaker.</p>\n")
            .Append($"<img alt=\"{name}: how long each current of the starts lasts, against the breaker's curve; the figures stand below\" src=\"data:image/png;base64,{Convert.ToBase64String(picture.AgainstCurve())}\">\n")
            .Append("<p>The same starts over time, as the firmware makes them in the virtual shop.</p>\n")
            .Append($"<img alt=\"{name}: current over the first three seconds\" src=\"data:image/png;base64,{Convert.ToBase64String(picture.OverTime())}\">\n");
    }

    private static void AddList(StringBuilder page, IEnumerable<string> lines)
    {
        page.Append("<ul>\n");
        foreach (string line in lines)
        {
            page.Append($"<li>{Text(line)}</li>\n");
        }

        page.Append("</ul>\n");
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
