using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;
using Spectre.Console;

namespace NanoDustSwitch.Sizing.Pages;

/// <summary>The judgement on a terminal.</summary>
internal static class TextPage
{
    // Wider lines are hard to read.
    private const int Widest = 100;
    private const int NameWidth = 22;
    private const int MarkWidth = 4;

    /// <summary>Writes it.</summary>
    /// <param name="console">The terminal.</param>
    /// <param name="advice">The judgement.</param>
    public static void Write(IAnsiConsole console, Advice advice)
    {
        int width = Math.Min(console.Profile.Width, Widest);
        Order order = advice.Judgement.Order;
        console.WriteLine($"vacuum {order.Vacuum.Nameplate}, tool {order.Tool.Nameplate}, {order.ToolCircuit.Supply}");
        foreach (Section section in advice.Judgement.Sections)
        {
            console.WriteLine();
            console.MarkupLine($"[bold]{Markup.Escape(section.Title)}[/]");
            Grid grid = new Grid { Width = width }
                .AddColumn(new GridColumn().Width(MarkWidth).Padding(0, 0, 1, 0))
                .AddColumn(new GridColumn().Width(NameWidth).Padding(0, 0, 1, 0))
                .AddColumn(new GridColumn().Padding(0, 0, 0, 0));
            foreach (Finding finding in section.Findings)
            {
                grid.AddRow(
                    MarkOf(finding.Outcome),
                    Markup.Escape(finding.What),
                    $"{Markup.Escape(finding.Working)} [grey]({Markup.Escape(finding.Source.ToString())})[/]");
            }

            console.Write(grid);
        }

        WriteSettings(console, advice, width);
        WriteVerdict(console, advice, width);
        console.WriteLine();
        foreach (string caution in Cautions.All)
        {
            Paragraph(console, width, "", caution);
        }
    }

    private static string MarkOf(Outcome outcome) => outcome switch
    {
        Outcome.Fits => "[green]ok[/]",
        Outcome.Mind => "[yellow]mind[/]",
        Outcome.Add => "[yellow]add[/]",
        _ => "[red]NO[/]",
    };

    private static void WriteSettings(IAnsiConsole console, Advice advice, int width)
    {
        console.WriteLine();
        console.MarkupLine("[bold]To type at the box's console[/]");
        if (advice.Judgement.HasSettings)
        {
            Paragraph(console, width, "     ", string.Join(" | ", advice.Judgement.Lines.Append("save")));
            Paragraph(
                console,
                width,
                "     ",
                "a line each; then 'teach' with the real tool, which finds these levels on the real line");
        }
        else
        {
            Paragraph(console, width, "     ", "none: 'teach' would refuse this tool");
        }
    }

    private static void WriteVerdict(IAnsiConsole console, Advice advice, int width)
    {
        console.WriteLine();
        string style = advice.Fits ? "[bold green]" : advice.Outcome == Outcome.Add ? "[bold yellow]" : "[bold red]";
        foreach ((string heading, IReadOnlyList<string> lines) in advice.Verdict)
        {
            console.MarkupLine($"{style}{Markup.Escape(heading)}[/]");
            style = "[default]";
            foreach (string line in lines)
            {
                Paragraph(console, width, "   - ", line);
            }
        }
    }

    private static void Paragraph(IAnsiConsole console, int width, string before, string text)
    {
        Grid grid = new Grid { Width = width }
            .AddColumn(new GridColumn().Width(before.Length).Padding(0, 0, 0, 0).NoWrap())
            .AddColumn(new GridColumn().Padding(0, 0, 0, 0));
        console.Write(grid.AddRow(before.TrimEnd(), Markup.Escape(text)));
    }
}
