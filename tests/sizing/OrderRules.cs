using System.Text.RegularExpressions;
using NanoDustSwitch.Drawing.Netlists;
using NanoDustSwitch.Sizing.Building;
using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.SizingTests;

/// <summary>
/// What must stand in an order's folder: all that the verdict rests on, in drawing, list, label and sheet; nothing of another.
/// </summary>
/// <param name="advice">The order, judged.</param>
/// <param name="build">Its wiring.</param>
/// <param name="page">The page in Markdown.</param>
/// <param name="drawing">The drawing.</param>
internal sealed partial class OrderRules(Advice advice, Build build, string page, string drawing)
{
    private static readonly string[] s_all = ["drawing", "Parts", "Label", "Commissioning sheet"];

    private static readonly IReadOnlyList<PartRow> s_rows = PartRow.All();

    private readonly Order _order = advice.Judgement.Order;

    /// <summary>Gives a sentence for each thing that is missing or too much.</summary>
    /// <returns>The sentences.</returns>
    public IEnumerable<string> Findings()
    {
        string[] conditions = [.. advice.Judgement.Additions, .. advice.Judgement.OtherConditions];
        return
        [
            .. conditions.Concat(advice.Verdict.SelectMany(each => each.Heading.EndsWith("conditions:", StringComparison.Ordinal)
                ? each.Lines : [])).Where(each => !In("The verdict rests on").Contains(each, StringComparison.Ordinal))
                .Select(each => $"not said: {each}"),
            .. conditions.SelectMany(OfCondition),
            .. advice.Judgement.Lines.SelectMany(line => Missing(line, "Settings to type", "Commissioning sheet")),
            .. Missing(_order.ToolCircuit.BreakerText, "Label"),
            .. Missing(_order.VacuumCircuit.BreakerText, "Label"),
            .. _order.IsReadyMade ? [] : OfWires(),
            .. OfParts(),
            .. OfMaterial(),
            .. SheetWords.OfLabel(_order).SelectMany(words => Missing(words, "Label")),
            .. SheetWords.OfSheet(_order, build).SelectMany(words => Missing(words, "Commissioning sheet")),
            .. Missing("\nsave\n", "Settings to type"),
        ];
    }

    // The words of the judgement, read again: what they name is to be found by whoever buys, wires, labels and checks.
    private IEnumerable<string> OfCondition(string condition)
    {
        if (Motor().Match(condition) is { Success: true } motor)
        {
            foreach (string finding in Missing(motor.Value, s_all))
            {
                yield return finding;
            }
        }

        if (Breaker().Match(condition) is { Success: true } breaker)
        {
            string amperes = breaker.Groups["amperes"].Value;
            foreach (string finding in Missing(breaker.Groups["part"].Value, "drawing", "Parts", "Commissioning sheet")
                .Concat(Missing(amperes + ",", "drawing", "Parts"))
                .Concat(Missing($"fitted: {amperes}", "Commissioning sheet"))
                .Concat(Missing($"equipment of {amperes}", "Label")))
            {
                yield return finding;
            }
        }

        if (Fuse().Match(condition) is { Success: true } fuse)
        {
            string amperes = fuse.Groups["amperes"].Value;
            foreach (string finding in Missing($"fuse {amperes}", _order.IsReadyMade ? [] : ["drawing", "Parts"])
                .Concat(Missing($"fuse of {amperes}", "Label"))
                .Concat(Missing(amperes, "Commissioning sheet")))
            {
                yield return finding;
            }
        }

        if (condition.Contains("residual-current", StringComparison.Ordinal))
        {
            string kind = condition.Contains("class A", StringComparison.Ordinal) ? "class A (4 to 6 mA)" : "30 mA";
            foreach (string finding in Missing(kind, "Label", "Commissioning sheet"))
            {
                yield return finding;
            }
        }
    }

    private IEnumerable<string> OfWires() =>
    [
        .. _order.Cords.Where(cord => cord.Use is CordUse.Box or CordUse.Head).GroupBy(cord => cord.Use)
            .Select(cords => cords.MinBy(cord => cord.Size.Ampacity)!.Size.Name)
            .SelectMany(size => Missing($"cord {size}", "drawing", "Parts")),
        .. Missing($"plug {_order.VacuumCircuit.Plug.Name}", "drawing", "Parts"),
        .. Missing($"socket {_order.ToolCircuit.Plug.Name}", "drawing", "Parts"),
        .. Missing(
            _order.VacuumCircuit.IsTwoPole ? "two poles" : "one pole", "drawing", "Parts", "Commissioning sheet"),
        .. _order.Turns > 1 ? Missing($"{_order.Turns} turns", "drawing", "Parts") : [],
    ];

    // Part for part: what is drawn is listed, and of all others in hardware/parts.csv neither name nor row is anywhere.
    private IEnumerable<string> OfParts()
    {
        string[] drawn =
        [
            .. build.Parts.Where(part => part.PartOf.Length == 0).Select(part => part.Name),
        ];
        string[] listed = [.. Row().Matches(In("Parts")).Select(row => row.Groups["part"].Value)];
        string[] others = [.. s_rows.Select(row => row.Part).Where(part => char.IsUpper(part[0])).Except(drawn)];
        string[] words = [.. Word().Matches(page + drawing).Select(word => word.Value).Distinct()];
        string[] inside = [.. build.Parts.Select(part => part.Name)];
        bool saysHead = page.Contains("sensing head", StringComparison.Ordinal);
        bool saysBought = page.Contains("line splitter", StringComparison.Ordinal);
        return
        [
            .. drawn.Except(listed).Select(part => $"{part} is drawn and not listed"),
            .. drawn.Where(part => !DrawnName(part)).Select(part => $"{part} is not drawn"),
            // PE is a pin's name as well.
            .. others.Except(inside).Except(["PE"]).Intersect(words).Select(part => $"{part} is for another order"),
            .. saysHead != (_order.HasHead && !_order.IsReadyMade) ? ["sensing head, or none"] : (string[])[],
            .. saysBought != _order.IsReadyMade ? ["line splitter, or none"] : (string[])[],
        ];
    }

    // What is in no drawing: wire, ferrules, glands, printed parts.
    private IEnumerable<string> OfMaterial()
    {
        string[] builds =
        [
            "all", _order.IsReadyMade ? "ready-made" : "wired", _order.HasHead && !_order.IsReadyMade ? "two circuits" : "",
        ];
        foreach (PartRow row in s_rows.Where(row => char.IsLower(row.Part[0])))
        {
            bool isListed = In("Parts").Contains($"\n| {row.Part} |", StringComparison.Ordinal);
            if (isListed != builds.Contains(row.For))
            {
                yield return isListed ? $"{row.Part} is for another order" : $"{row.Part} is not listed";
            }
        }
    }

    private bool DrawnName(string part) => drawing.Contains($">{part}<", StringComparison.Ordinal);

    private IEnumerable<string> Missing(string text, params string[] places) =>
        places.Where(place => !In(place).Contains(text, StringComparison.Ordinal))
            .Select(place => $"'{text}' is missing in {place}");

    private string In(string place)
    {
        if (place == "drawing")
        {
            // A part's text is drawn line by line.
            return Line().Replace(drawing, " ");
        }

        string[] sections = page.Split("\n## ");
        return sections.Single(section => section.StartsWith(place, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"AC-3 or AC-7b \d+ A( or [\d\-/]+ hp)?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Motor();

    [GeneratedRegex(@"^(?<part>CB\d), a breaker for equipment of (?<amperes>\d+ A)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Breaker();

    [GeneratedRegex(@"^a fuse of (?<amperes>\d+ A)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Fuse();

    [GeneratedRegex(@"^\| (?<part>[A-Z]+\d*) \|", RegexOptions.ExplicitCapture | RegexOptions.Multiline, 1000)]
    private static partial Regex Row();

    [GeneratedRegex(@"\b[A-Z]{1,2}\d*\b", RegexOptions.None, 1000)]
    private static partial Regex Word();

    [GeneratedRegex(@"</text>\s*<text[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex Line();
}
