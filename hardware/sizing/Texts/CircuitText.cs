using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>
/// Reads circuits: a breaker <c>15A</c> or <c>C16</c>, and the vacuum's own circuit <c>20A</c>, <c>15A/120V</c>, <c>20A/US20</c>.
/// </summary>
internal static class CircuitText
{
    /// <summary>What is typed for a second plug on the tool's circuit.</summary>
    public const string Same = "same";

    /// <summary>Reads the circuit of the tool.</summary>
    /// <param name="breaker">The breaker as typed.</param>
    /// <param name="plug">The plug as typed, or null.</param>
    /// <param name="supply">The supply.</param>
    /// <returns>The circuit.</returns>
    public static Circuit Tool(string breaker, string? plug, Supply supply)
    {
        (ElectricCurrent rating, BreakerCurve curve) = Breaker("--breaker", breaker, breaker, supply);
        return new Circuit(supply, rating, curve, PlugOf("--plug", plug, supply, rating, null));
    }

    /// <summary>Reads the vacuum's own circuit.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="tool">The tool's circuit, whose supply and plug it takes where it names none.</param>
    /// <returns>The circuit.</returns>
    public static Circuit Vacuum(string text, Circuit tool)
    {
        Circuit vacuum = IsSame(text) ? tool : OfItsOwn(text, tool);
        return !vacuum.Supply.IsTwoHot ? vacuum : throw new UserException(
            $"--vacuum-circuit {text}: no drawing has a sensing head for the tool and a vacuum's box on two hot wires; "
            + "allowed is a vacuum at 120 V, such as 15A/120V.");
    }

    /// <summary>Tells whether a second plug on the tool's circuit is meant.</summary>
    /// <param name="text">What was typed.</param>
    /// <returns>True if it is.</returns>
    public static bool IsSame(string text) => text.Trim().Equals(Same, StringComparison.OrdinalIgnoreCase);

    private static Circuit OfItsOwn(string text, Circuit tool)
    {
        const string Option = "--vacuum-circuit";
        string[] parts = text.Split('/');
        Supply supply = tool.Supply;
        string? plug = null;
        foreach (string part in parts.Skip(1))
        {
            if (QuantityText.TryParse(part, Units.Voltage, out ElectricPotential volts))
            {
                supply = OtherVoltage(text, volts, tool.Supply);
            }
            else
            {
                plug = part;
            }
        }

        (ElectricCurrent rating, BreakerCurve curve) = Breaker(Option, text, parts[0], supply);
        return new Circuit(supply, rating, curve, PlugOf(Option, plug, supply, rating, tool));
    }

    private static Supply OtherVoltage(string text, ElectricPotential volts, Supply tool)
    {
        Supply? supply = SupplyText.Known(volts, tool.Frequency);
        return supply is not null && (supply == tool || (supply.Place == Place.NorthAmerica && tool.Place == Place.NorthAmerica))
            ? supply
            : throw new UserException(
                $"--vacuum-circuit {text}: {volts.Volts:0} V does not go with a tool at {tool}; "
                + "two voltages are known for 120 and 240 V at 60 Hz only.");
    }

    private static (ElectricCurrent Rating, BreakerCurve Curve) Breaker(string option, string text, string breaker, Supply supply)
    {
        string rest = breaker.Trim().ToUpperInvariant();
        char letter = rest.Length > 0 && rest[0] is 'B' or 'C' or 'D' ? rest[0] : '-';
        bool isIec = supply.Place == Place.Elsewhere;
        if (letter != '-')
        {
            rest = rest[1..];
            rest += rest.EndsWith('A') ? "" : "A";
        }

        if (!QuantityText.TryParse(rest, Units.Current, out ElectricCurrent rating))
        {
            throw new UserException(
                $"{option} {text} cannot be read; give the breaker's rating, such as {(isIec ? "B16 or C16" : "15A")}.");
        }

        if (letter != '-' && !isIec)
        {
            throw new UserException(
                $"{option} {text} cannot be used: breakers of kind B, C and D are not in use at {supply.Volts.Volts:0} V; "
                + "give the rating alone, such as 15A.");
        }

        IReadOnlyList<int> ratings = BreakerRatings.Of(supply.Place);
        if (!ratings.Any(each => each == rating.Amperes))
        {
            string why = rating.Amperes > ratings[^1]
                ? "is more than any listed part of this box carries"
                : $"is no breaker that is known at {supply.Volts.Volts:0} V";
            throw new UserException(
                $"{option} {text}: {rating.Amperes:0.##} A {why}; allowed are {string.Join(", ", ratings)} A.");
        }

        // Without a letter the kind that trips soonest.
        BreakerCurve curve = !isIec ? BreakerCurve.NorthAmerican
            : letter == 'C' ? BreakerCurve.C
            : letter == 'D' ? BreakerCurve.D
            : BreakerCurve.B;
        return (rating, curve);
    }

    private static Plug PlugOf(string option, string? name, Supply supply, ElectricCurrent breaker, Circuit? other)
    {
        string names = string.Join(", ", Plugs.For(supply).Select(plug => plug.Name));
        if (name is null)
        {
            return other is not null && other.Supply == supply && supply.Place != Place.NorthAmerica ? other.Plug
                : Plugs.Usual(supply, breaker)
                ?? throw new UserException($"--plug is needed at {supply.Volts.Volts:0} V; known are {names}.");
        }

        Plug? plug = Plugs.All.FirstOrDefault(plug => plug.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));
        return plug is null ? throw new UserException($"{option} {name} is not known; known at {supply} are {names}.")
            : Plugs.For(supply).Contains(plug) ? plug
            : throw new UserException($"{option} {plug.Name} does not go with {supply}; known there are {names}.");
    }
}
