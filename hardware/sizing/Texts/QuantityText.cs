using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>A number and a unit as people type them; the units are the library's.</summary>
internal static partial class QuantityText
{
    /// <summary>Reads a number with its unit.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="text">What was typed.</param>
    /// <param name="units">What its unit may be, and the unit's factor in the library.</param>
    /// <param name="quantity">The quantity.</param>
    /// <returns>False where it is no number with such a unit.</returns>
    public static bool TryParse<T>(string text, IReadOnlyDictionary<string, Enum> units, out T quantity)
        where T : IQuantity
    {
        quantity = default!;
        Match match = NumberAndUnit().Match(text.Trim());
        if (!match.Success || !units.TryGetValue(match.Groups["unit"].Value.ToLowerInvariant(), out Enum? unit)
            || !TryNumber(match.Groups["number"].Value, out double number))
        {
            return false;
        }

        quantity = (T)Quantity.From(number, unit);
        return true;
    }

    /// <summary>
    /// Reads a number; a comma may stand for the point, but nothing may part thousands: 1,5 must never become 15.
    /// </summary>
    /// <param name="text">What was typed.</param>
    /// <param name="number">The number.</param>
    /// <returns>False where it is none.</returns>
    public static bool TryNumber(string text, out double number) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);

    [GeneratedRegex(
        "^(?<number>[0-9]{1,9}([.,][0-9]{1,9})?) ?(?<unit>[A-Za-zµ²]+[0-9²]?)$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex NumberAndUnit();
}
