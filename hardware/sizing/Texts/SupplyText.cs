using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Sizing.Orders;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>Reads a supply: <c>120V/60Hz</c>.</summary>
internal static class SupplyText
{
    private static readonly (int Volts, int Hertz)[] s_known =
        [(100, 50), (100, 60), (120, 60), (220, 50), (220, 60), (230, 50), (230, 60), (240, 50), (240, 60)];

    /// <summary>Reads.</summary>
    /// <param name="text">What was typed.</param>
    /// <returns>The supply.</returns>
    public static Supply Read(string text)
    {
        string[] parts = text.Split('/');
        if (parts.Length != 2 || !QuantityText.TryParse(parts[0], Units.Voltage, out ElectricPotential volts)
            || !QuantityText.TryParse(parts[1], Units.Frequency, out Frequency frequency))
        {
            throw new UserException($"--supply {text} cannot be read; give volts and hertz, such as 120V/60Hz.");
        }

        return Known(volts, frequency) ?? throw new UserException(
            $"--supply {text} is not known; known are 100V at 50 and 60Hz, 120V/60Hz, 220V and 230V at 50 and 60Hz, 240V/50Hz, "
            + "and 240V/60Hz between two hot wires.");
    }

    /// <summary>Gives a supply if it is one that is known.</summary>
    /// <param name="volts">Its voltage.</param>
    /// <param name="frequency">Its frequency.</param>
    /// <returns>The supply, or null.</returns>
    public static Supply? Known(ElectricPotential volts, Frequency frequency) =>
        s_known.Any(known => known.Volts == volts.Volts && known.Hertz == frequency.Hertz) ? new Supply(volts, frequency) : null;
}
