using NanoDustSwitch.Drawing.Netlists;
using NanoDustSwitch.Drawing.Sheets;
using NanoDustSwitch.Simulator.Pages;
using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Pages;

namespace NanoDustSwitch.Sizing.Building;

/// <summary>The page to build an order by.</summary>
/// <param name="advice">The order, judged; it fits, or fits with an addition.</param>
internal sealed class OrderPage(Advice advice)
{
    /// <summary>The drawing's file beside the page.</summary>
    public const string DrawingFile = "wiring.svg";

    private readonly Order _order = advice.Judgement.Order;

    /// <summary>Gets the wiring.</summary>
    public Build Build { get; } = OrderDrawing.Of(advice.Judgement.Order);

    /// <summary>Gets the wiring, drawn.</summary>
    public string Drawing => new Sheet(Build).Draw();

    /// <summary>Gets what stands at the head of the page.</summary>
    public string Title => "To build: " + Build.Title;

    /// <summary>Gets the page to read: what must be known before.</summary>
    private string Guide => _order.IsReadyMade ? "hardware/ready-made.md" : "hardware/README.md";

    /// <summary>Writes the page.</summary>
    /// <param name="page">Where to.</param>
    public void Write(IPage page)
    {
        page.AddList(Cautions.All);
        page.AddText($"Nobody has built this. The steps and their reasons: {Guide}. Made for this order and for no other:");
        page.AddLines([_order.Options]);
        page.AddHeading("The verdict rests on");
        page.AddForm(
            ["what must be so", "is so"],
            advice.Judgement.Additions.Select(each => $"ADD {each}").Concat(advice.Verdict.First(IsConditions).Lines)
                .Select(each => (string[])[each, ""]));
        page.AddHeading("Wiring");
        page.AddDrawing(Drawing, Build.Size[0], Build.Size[1], DrawingFile, "Wiring of this order");
        page.AddHeading("Parts");
        page.AddText("Prices are from memory and rough. Spares are not counted; T2 with R28 may be left out.");
        page.AddForm(PartList.Header, PartList.Of(_order, Build));
        page.AddText("The driver board's own parts: hardware/circuits/parts.csv.");
        page.AddHeading("Tools");
        page.AddList(ToolList.Of(_order));
        page.AddHeading("Label");
        page.AddLines(BoxLabel.Of(_order));
        page.AddHeading("Settings to type");
        page.AddLines(advice.Judgement.Lines.Append("save"));
        page.AddHeading("Commissioning sheet");
        page.AddText("The builder measures, the second person reads and ticks. A line that is not reached ends the work.");
        foreach (SheetPart part in CommissioningSheet.Of(_order, advice.Judgement.Lines))
        {
            page.AddText(part.Title);
            page.AddForm(part.Header, part.Rows);
        }

        page.AddText("I have seen every line above. It may be used as its label says, until the next check on ____________.");
        page.AddText("Builder ____________________   Second person ____________________   Date ____________");
    }

    private static bool IsConditions((string Heading, IReadOnlyList<string> Lines) verdict) =>
        verdict.Heading.EndsWith("conditions:", StringComparison.Ordinal);
}
