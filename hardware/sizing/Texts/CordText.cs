using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>Reads a cord: <c>8m/14AWG</c>, <c>head:1m/14AWG</c>, <c>tool:25ft/16AWG</c>, <c>vacuum:6m/1.5mm2</c>.</summary>
internal static class CordText
{
    private const double LongestMeters = 100;

    /// <summary>
    /// Gives the cords with one for the sensing head: where none is named, the tool's stands for it, and where that is not named
    /// either, one that carries what breaker and plug may.
    /// </summary>
    /// <param name="cords">The cords as typed, one of them the box's.</param>
    /// <param name="circuit">The head's circuit.</param>
    /// <returns>The cords.</returns>
    public static List<Cord> WithHead(IReadOnlyList<Cord> cords, Circuit circuit) =>
        cords.Any(cord => cord.Use == CordUse.Head) ? [.. cords]
        : cords.Any(cord => cord.Use == CordUse.Tool)
            ? [.. cords.Select(cord => cord.Use == CordUse.Tool ? cord with { Use = CordUse.Head } : cord)]
        : [.. cords, HeadFor(cords, Least(circuit)) with { IsAssumed = true }];

    /// <summary>Gives a cord of 1 m for a sensing head.</summary>
    /// <param name="cords">The cords, one of them the box's, whose family of sizes it takes.</param>
    /// <param name="current">What it must carry.</param>
    /// <returns>The cord.</returns>
    public static Cord HeadFor(IReadOnlyList<Cord> cords, ElectricCurrent current) => new(
        CordUse.Head,
        Length.FromMeters(1),
        "1m",
        WireSizes.Carrying(cords.First(cord => cord.Use == CordUse.Box).Size, current));

    /// <summary>Reads.</summary>
    /// <param name="text">What was typed.</param>
    /// <returns>The cord.</returns>
    public static Cord Read(string text)
    {
        string rest = text.Trim();
        CordUse use = CordUse.Box;
        if (rest.Split(':') is { Length: 2 } halves)
        {
            use = halves[0].Trim().ToLowerInvariant() switch
            {
                "box" => CordUse.Box,
                "head" => CordUse.Head,
                "tool" => CordUse.Tool,
                "vacuum" => CordUse.Vacuum,
                _ => throw new UserException(
                    $"--cord {text}: '{halves[0]}' is nothing that a cord feeds here; "
                    + "allowed are box:, head:, tool: and vacuum:."),
            };
            rest = halves[1];
        }

        if (rest.Split('/') is not { Length: 2 } parts || !QuantityText.TryParse(parts[0], Units.Length, out Length length))
        {
            throw new UserException(
                $"--cord {text} cannot be read; give length and size, such as 8m/14AWG, tool:25ft/16AWG or vacuum:5m/1.5mm2.");
        }

        if (length.Meters is < 0.1 or > LongestMeters)
        {
            throw new UserException($"--cord {text} is not allowed: 0.1 to {LongestMeters:0} m.");
        }

        string name = parts[1].Trim().Replace(" ", "").Replace("²", "2").Replace("^", "").Replace(',', '.')
            .Replace(".0mm", "mm");
        WireSize size = WireSizes.All.FirstOrDefault(size => size.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
            ?? throw new UserException(
                $"--cord {text}: {parts[1]} is no size that is known; "
                + $"known are {string.Join(", ", WireSizes.All.Select(each => each.Name))}.");
        return new Cord(use, length, parts[0].Trim().Replace(" ", ""), size);
    }

    // A plug for less than the breaker has a fuse, or is given a breaker for equipment.
    private static ElectricCurrent Least(Circuit circuit) =>
        circuit.Breaker < circuit.Plug.Rating ? circuit.Breaker : circuit.Plug.Rating;
}
