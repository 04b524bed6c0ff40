using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration.Attributes;

namespace NanoDustSwitch.Sizing.Building;

/// <summary>A row of hardware/parts.csv.</summary>
internal sealed record PartRow
{
    [Name("part")]
    public required string Part { get; init; }

    /// <summary>Builds that need it: all, wired, two circuits, ready-made; a part of a drawing goes by the drawing.</summary>
    [Name("for")]
    public required string For { get; init; }

    [Name("what")]
    public required string What { get; init; }

    /// <summary>What its label or data sheet must say.</summary>
    [Name("rating")]
    public required string Rating { get; init; }

    [Name("mark")]
    public required string Mark { get; init; }

    [Name("quantity")]
    public required int Quantity { get; init; }

    /// <summary>Usual price, US dollars each.</summary>
    [Name("price")]
    public required string Price { get; init; }

    /// <summary>What may stand in for it.</summary>
    [Name("instead")]
    public required string Instead { get; init; }

    /// <summary>Reads all.</summary>
    /// <returns>The rows.</returns>
    public static IReadOnlyList<PartRow> All()
    {
        using CsvReader reader = new(new StringReader(Resource.Text("parts.csv")), CultureInfo.InvariantCulture);
        return [.. reader.GetRecords<PartRow>()];
    }
}
