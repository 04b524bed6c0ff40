using System.Text.RegularExpressions;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>Reads a load: <c>10A</c>, <c>1400W</c>, <c>1.5hp/induction</c>.</summary>
internal static partial class LoadText
{
    private const double Least = 0.02;
    private const double Greatest = 60;

    // On a plug of 120 V no more than this comes out of a motor.
    private const double GreatestHorsepowerAt120 = 2;

    /// <summary>Reads the vacuum.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="supply">Its supply.</param>
    /// <returns>The load.</returns>
    public static Load Vacuum(string text, Supply supply)
    {
        if (Horsepower().IsMatch(text))
        {
            throw new UserException(
                $"--vacuum {text} cannot be used: horsepower on a vacuum is a peak figure and no rating; "
                + "give the amperes or watts of its nameplate, such as 10A.");
        }

        return Within("--vacuum", text, Nameplate("--vacuum", text, text.Trim(), ToolKind.Universal, true, supply), supply);
    }

    /// <summary>Reads the tool.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="supply">Its supply.</param>
    /// <returns>The load.</returns>
    public static Load Tool(string text, Supply supply)
    {
        string figure = text.Trim();
        ToolKind kind = ToolKind.Induction;
        bool isKindGiven = false;
        if (KindAtEnd().Match(figure) is { Success: true } match)
        {
            string name = match.Groups["kind"].Value.ToLowerInvariant();
            kind = ToolKinds.Find(name)
                ?? throw new UserException(
                    $"--tool {text}: '{name}' is no kind of motor that is known; "
                    + $"allowed are {string.Join(", ", ToolKinds.Names)}.");
            isKindGiven = true;
            figure = figure[..match.Index];
        }

        return Within("--tool", text, Nameplate("--tool", text, figure, kind, isKindGiven, supply), supply);
    }

    private static Load Nameplate(string option, string text, string figure, ToolKind kind, bool isKindGiven, Supply supply)
    {
        if (Horsepower().IsMatch(figure))
        {
            return Motor(option, text, figure, kind, isKindGiven, supply);
        }

        if (QuantityText.TryParse(figure, Units.Current, out ElectricCurrent current))
        {
            return new Load($"{current.Amperes:0.###} A", kind, isKindGiven) { Current = current };
        }

        if (QuantityText.TryParse(figure, Units.Power, out Power watts))
        {
            return new Load($"{watts.Watts:0.#} W", kind, isKindGiven) { Watts = watts };
        }

        string allowed = option == "--tool"
            ? "amperes, watts or a motor's rated horsepower, such as 12A, 1400W or 1.5hp"
            : "amperes or watts, such as 10A or 1200W";
        throw new UserException($"{option} {text} cannot be read; allowed are {allowed}.");
    }

    private static Load Motor(string option, string text, string figure, ToolKind kind, bool isKindGiven, Supply supply)
    {
        Match match = PlainHorsepower().Match(figure);
        if (!match.Success)
        {
            throw new UserException(
                $"{option} {text} cannot be used: peak or developed horsepower is no rating; "
                + "give the amperes of the nameplate, or a motor's rated horsepower such as 1.5hp.");
        }

        if (supply.Place == Place.Japan)
        {
            throw new UserException(
                $"{option} {text} cannot be used: the table of horsepower is for 115 and 230 V; "
                + "at 100 V give the amperes of the nameplate.");
        }

        double horsepower = Fraction(match.Groups["number"].Value);
        MotorRating row = MotorTable.Rows.FirstOrDefault(row => Math.Abs(row.Horsepower - horsepower) < 1e-9)
            ?? throw new UserException(
                $"{option} {text} cannot be used: NEC Table 430.248 has "
                + $"{string.Join(", ", MotorTable.Rows.Select(each => each.Name.Replace(" hp", "")))} hp; "
                + "give the amperes of the nameplate.");
        if (supply.Volts.Volts < 200 && horsepower > GreatestHorsepowerAt120)
        {
            throw new UserException(
                $"{option} {text} cannot be used: at {supply.Volts.Volts:0} V that is {row.At(supply).Amperes:0} A, "
                + "more than a plug carries, so it is a peak figure; give the amperes of the nameplate.");
        }

        return new Load($"{horsepower:0.##} hp", kind, isKindGiven) { Motor = row };
    }

    private static double Fraction(string text)
    {
        string[] parts = text.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries);
        double sum = 0;
        foreach (string part in parts)
        {
            string[] ratio = part.Split('/');
            _ = QuantityText.TryNumber(ratio[0], out double number);
            double under = 1;
            _ = ratio.Length < 2 || QuantityText.TryNumber(ratio[1], out under);
            sum += number / under;
        }

        return sum;
    }

    private static Load Within(string option, string text, Load load, Supply supply)
    {
        double amperes = load.At(supply).Amperes;
        return amperes is >= Least and <= Greatest
            ? load
            : throw new UserException(
                $"{option} {text} is {amperes:0.###} A at {supply.Volts.Volts:0} V, "
                + $"which is not allowed: {Least} to {Greatest} A.");
    }

    [GeneratedRegex("hp|horse", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Horsepower();

    [GeneratedRegex(
        "^(?<number>([0-9]+[ -])?[1-9]/[1-9]|[0-9]+([.,][0-9]+)?) ?hp$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex PlainHorsepower();

    [GeneratedRegex("/(?<kind>[A-Za-z][A-Za-z -]+)$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex KindAtEnd();
}
