using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>Reads a cord: <c>8m/14AWG</c>, <c>tool:25ft/16AWG</c>, <c>vacuum:6m/1.5mm2</c>.</summary>
internal static class CordText
{
    private const double LongestMeters = 100;

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
                "tool" => CordUse.Tool,
                "vacuum" => CordUse.Vacuum,
                _ => throw new UserException(
                    $"--cord {text}: '{halves[0]}' is nothing that a cord feeds here; allowed are box:, tool: and vacuum:."),
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

        string name = parts[1].Trim().Replace(" ", "").Replace("²", "2").Replace("^", "").Replace(',', '.');
        WireSize size = WireSizes.All.FirstOrDefault(size => size.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
            ?? throw new UserException(
                $"--cord {text}: {parts[1]} is no size that is known; "
                + $"known are {string.Join(", ", WireSizes.All.Select(each => each.Name))}.");
        return new Cord(use, length, parts[0].Trim().Replace(" ", ""), size);
    }
}
