using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Simulator.Pages;
using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Pages;

/// <summary>The judgement as a page.</summary>
internal static class JudgementPage
{
    /// <summary>Makes the page.</summary>
    /// <param name="advice">The judgement.</param>
    /// <param name="trials">The trials.</param>
    /// <returns>The page.</returns>
    public static HtmlPage Of(Advice advice, TrialBook trials)
    {
        Judgement judgement = advice.Judgement;
        Order order = judgement.Order;
        HtmlPage page = new(
            "Dust switch: what goes together",
            $"Vacuum {order.Vacuum.Nameplate}, tool {order.Tool.Nameplate}, {order.ToolCircuit.Supply}");
        page.AddVerdict(advice.Verdict.First().Heading, advice.Fits);
        page.AddList(advice.Verdict.First().Lines);
        foreach ((string heading, IReadOnlyList<string> lines) in advice.Verdict.Skip(1))
        {
            page.AddText(heading);
            page.AddList(lines);
        }

        page.AddText("Judged:");
        page.AddLines([order.Options]);
        AddPictures(page, order, trials);
        foreach (Section section in judgement.Sections)
        {
            page.AddHeading(section.Title);
            page.AddFindings(section.Findings.Select(finding =>
            {
                (string look, string mark) = finding.Outcome switch
                {
                    Outcome.Fits => ("good", "ok"),
                    Outcome.Mind => ("mind", "mind"),
                    Outcome.Add => ("mind", "add"),
                    _ => ("bad", "NO"),
                };
                return (look, mark, finding.What, finding.Working, $"{finding.Source}");
            }));
        }

        page.AddHeading("To type at the box's console");
        if (judgement.HasSettings)
        {
            page.AddLines(judgement.Lines.Append("save"));
            page.AddText("Then 'teach' with the real tool.");
        }
        else
        {
            page.AddText("None: 'teach' would refuse this tool.");
        }

        page.AddHeading("Before anything else");
        page.AddList(Cautions.All);
        return page;
    }

    private static void AddPictures(HtmlPage page, Order order, TrialBook trials)
    {
        StartCourse delayed = trials.Start(order, 1, withDelay: true);
        StartLine[] tool = [new("tool", ChartStyle.Blue, [.. StartJudge.ToolOf(delayed)])];
        if (!order.IsOneCircuit)
        {
            (double Seconds, double Amperes)[] vacuum = [.. delayed.Points.Select(point => (point.Seconds, point.Vacuum))];
            AddPicture(page, "Tool's circuit", new StartPicture(order.ToolCircuit, tool));
            StartLine[] lines = [new("vacuum", ChartStyle.Green, vacuum)];
            AddPicture(page, "Vacuum's circuit", new StartPicture(order.VacuumCircuit, lines));
            return;
        }

        AddPicture(page, "The circuit", new StartPicture(order.ToolCircuit,
        [
            new("both at once", ChartStyle.Purple, [.. StartJudge.ToolOf(trials.Start(order, 1, withDelay: false))]),
            new("vacuum after the surge", ChartStyle.Green, [.. StartJudge.ToolOf(delayed)]),
            new("tool alone", ChartStyle.Blue, [.. StartJudge.ToolAlone(order)]),
        ]));
    }

    private static void AddPicture(HtmlPage page, string name, StartPicture picture)
    {
        page.AddHeading($"{name}: starts against the breaker");
        page.AddText(
            "How long the circuit carries at least so much current. A line that reaches the orange band may trip the breaker.");
        page.AddPicture(
            picture.AgainstCurve(),
            $"{name}: how long each current of the starts lasts, against the breaker's curve; the figures stand below");
        page.AddText("The same starts over time, as tried with the firmware in the virtual shop.");
        page.AddPicture(picture.OverTime(), $"{name}: current over the first three seconds");
    }
}
