using NanoDustSwitch.Drawing.Netlists;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Building;

/// <summary>The parts of an order.</summary>
internal static class PartList
{
    // The head's holder has two more.
    private const int HeadScrews = 2;
    private const int TransformerTies = 3;

    /// <summary>The words above its columns.</summary>
    public static readonly IReadOnlyList<string> Header =
    [
        "part", "how many", "what, for this order", "label or data sheet must say", "approval mark", "US$ each, about",
        "may stand in",
    ];

    /// <summary>Gives the rows.</summary>
    /// <param name="order">The order.</param>
    /// <param name="build">Its wiring.</param>
    /// <returns>A row for each part.</returns>
    public static IEnumerable<IReadOnlyList<string>> Of(Order order, Build build)
    {
        Dictionary<string, string> ratings = Ratings.Of(order);
        foreach (PartRow row in PartRow.All().Where(row => IsNeeded(row, order, build)))
        {
            string own = ratings.TryGetValue(row.Part, out string? rating) ? $": {rating}" : "";
            yield return
            [
                row.Part, $"{Count(row, order, build)}", row.What + own, row.Rating, row.Mark, row.Price, row.Instead,
            ];
        }
    }

    private static bool IsNeeded(PartRow row, Order order, Build build) => IsInDrawings(row)
        ? build.Parts.Any(part => part.Name == row.Part && part.PartOf.Length == 0)
        : row.For switch
        {
            "all" => true,
            "ready-made" => order.IsReadyMade,
            "wired" => !order.IsReadyMade,
            "two circuits" => !order.IsReadyMade && order.HasHead,
            _ => throw new InvalidDataException($"parts.csv: {row.Part} is for '{row.For}', which is no kind of build."),
        };

    // X1, KM, PE: a name of the drawings; the others are material.
    private static bool IsInDrawings(PartRow row) => char.IsUpper(row.Part[0]);

    // A ferrule on every mains end but those in plug, socket and hole; a lug on every wire of the stud, and at box and lid; a tie
    // near each of them.
    private static int Count(PartRow row, Order order, Build build)
    {
        int ferrules = Ends("mains", "plug", "outlet", "transformer");
        int lugs = Ends("earth", "plug", "outlet", "bleed");
        return row.Part switch
        {
            "ferrule" => ferrules,
            "ring lug" => lugs,
            "cable tie" => ferrules + lugs + TransformerTies,
            "plastic screw" => row.Quantity + (order.HasHead ? HeadScrews : 0),
            _ => row.Quantity,
        };

        int Ends(string island, params string[] others) => build.Parts
            .Where(part => part.Box is "vacuum" && !others.Contains(part.Kind))
            .Sum(part => part.Pins.Count(pin => pin.Island == island));
    }
}
