using System.Text;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>The firmware's own words as texts of this program.</summary>
internal static class FirmwareText
{
    /// <summary>Gives what is written.</summary>
    /// <param name="write">Writes it.</param>
    /// <returns>The text.</returns>
    public static string Of(Action<TextOutput> write)
    {
        TextOutput output = new();
        write(output);
        byte[] bytes = new byte[TextOutput.Size];
        return Encoding.ASCII.GetString(bytes, 0, output.Take(bytes, bytes.Length));
    }

    /// <summary>Gives a setting's value as it is shown and typed.</summary>
    /// <param name="id">The setting.</param>
    /// <param name="value">Its value.</param>
    /// <returns>The text.</returns>
    public static string Of(SettingId id, int value) => Of(output => ValueText.Value(output, SettingsTable.Row(id), value));

    /// <summary>Gives the line that sets a setting, as it is typed at the console.</summary>
    /// <param name="id">The setting.</param>
    /// <param name="value">Its value.</param>
    /// <returns>The line.</returns>
    public static string Line(SettingId id, int value) => $"{SettingsTable.Row(id).Name} {Of(id, value)}";
}
