using CsvHelper.Configuration.Attributes;
using Ignored = CsvHelper.Configuration.Attributes.IgnoreAttribute;

namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>A row of hardware/barriers.csv: what stands between two islands, or between a hand and the mains.</summary>
internal sealed record Barrier
{
    [Name("part")]
    public required string Part { get; init; }

    [Name("between")]
    public required string Between { get; init; }

    [Name("insulation")]
    public required string Insulation { get; init; }

    [Name("creepage_mm")]
    public required double Creepage { get; init; }

    [Name("clearance_mm")]
    public required double Clearance { get; init; }

    [Name("test_V_ac")]
    public required int TestVolts { get; init; }

    [Name("mark")]
    public required string Mark { get; init; }

    [Name("kind")]
    public required string Kind { get; init; }

    [Name("why")]
    public required string Why { get; init; }

    /// <summary>How many insulations it counts for; a hand must be behind two.</summary>
    [Ignored]
    public int Strength => Insulation switch { "reinforced" or "double" => 2, "basic" or "supplementary" => 1, _ => 0 };

    public static IReadOnlyList<Barrier> Table() => Csv.Records<Barrier>("hardware/barriers.csv");
}
