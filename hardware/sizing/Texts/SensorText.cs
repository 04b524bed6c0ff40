using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>Reads the sensor and its turns.</summary>
internal static class SensorText
{
    /// <summary>Reads the sensor.</summary>
    /// <param name="name">What was typed.</param>
    /// <returns>The sensor.</returns>
    public static SensorModel Read(string name) =>
        SensorModels.All.FirstOrDefault(model => model.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase))
        ?? throw new UserException(
            $"--sensor {name} is not known; known are {string.Join(", ", SensorModels.All.Select(model => model.Name))}.");

    /// <summary>Checks the turns.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="sensor">The sensor.</param>
    /// <returns>The turns.</returns>
    public static int Turns(string text, SensorModel sensor) =>
        !int.TryParse(text, out int turns) || !SettingsTable.Row(SettingId.Turns).Allows(turns)
            ? throw new UserException(
                $"--turns {text} is not allowed: "
                + $"{FirmwareText.Of(output => ValueText.Range(output, SettingsTable.Row(SettingId.Turns)))}.")
        : turns > 1 && sensor.Kind == SensorKind.Hall
            ? throw new UserException("--turns is for a transformer: the tool's wire goes through a Hall sensor once.")
        : turns;
}
