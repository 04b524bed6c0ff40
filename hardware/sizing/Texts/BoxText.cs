using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Sizing.Orders;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>Reads the enclosure's outside: <c>200x120x75mm</c>.</summary>
internal static class BoxText
{
    private const double Least = 40;
    private const double Greatest = 1000;

    /// <summary>Reads.</summary>
    /// <param name="text">What was typed.</param>
    /// <returns>The box.</returns>
    public static Box Read(string text)
    {
        string rest = text.Trim().ToLowerInvariant().Replace(" ", "").Replace('×', 'x');
        string[] parts = (rest.EndsWith("mm", StringComparison.Ordinal) ? rest[..^2] : rest).Split('x');
        double[] sides = new double[3];
        if (parts.Length != 3 || !Enumerable.Range(0, 3).All(i => QuantityText.TryNumber(parts[i], out sides[i])))
        {
            throw new UserException($"--box {text} cannot be read; give width, depth and height in mm, such as 200x120x75mm.");
        }

        return sides.All(side => side is >= Least and <= Greatest)
            ? new Box(Length.FromMillimeters(sides[0]), Length.FromMillimeters(sides[1]), Length.FromMillimeters(sides[2]))
            : throw new UserException($"--box {text} is not allowed: each side {Least:0} to {Greatest:0} mm.");
    }
}
