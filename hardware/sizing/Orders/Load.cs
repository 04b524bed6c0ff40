using NanoDustSwitch.Simulator.Shop;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>Vacuum or tool, by what its nameplate says: amperes, watts or a motor's horsepower.</summary>
/// <param name="Nameplate">The nameplate's figure with its unit.</param>
/// <param name="Kind">What kind of motor it has.</param>
/// <param name="IsKindGiven">Whether that was said or is assumed.</param>
internal sealed record Load(string Nameplate, ToolKind Kind, bool IsKindGiven)
{
    /// <summary>Power factor of a small motor, for a nameplate in watts: common practice, no source.</summary>
    public const double PowerFactor = 0.9;

    /// <summary>Gets the nameplate's current, where it has one.</summary>
    public ElectricCurrent? Current { get; init; }

    /// <summary>Gets the nameplate's power, where it has one.</summary>
    public Power? Watts { get; init; }

    /// <summary>Gets the motor's rating in the table, where that is given.</summary>
    public MotorRating? Motor { get; init; }

    /// <summary>Gives the current that it draws at full load.</summary>
    /// <param name="supply">The supply.</param>
    /// <returns>The current, rms.</returns>
    public ElectricCurrent At(Supply supply) =>
        Current ?? Motor?.At(supply) ?? (Watts!.Value / supply.Volts / PowerFactor);

    /// <summary>Gives the way to that current.</summary>
    /// <param name="supply">The supply.</param>
    /// <returns>A sum in words.</returns>
    public string Working(Supply supply)
    {
        string amperes = $"{At(supply).Amperes:0.0#} A";
        return Current is not null ? $"nameplate {amperes}"
            : Motor is not null ? $"nameplate {Nameplate}, in the code's table {amperes}"
            : $"nameplate {Nameplate} / {supply.Volts.Volts:0} V / power factor {PowerFactor} = {amperes}";
    }
}
