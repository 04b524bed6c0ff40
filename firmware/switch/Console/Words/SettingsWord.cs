namespace NanoDustSwitch.Firmware;

/// <summary>Lists the settings.</summary>
public sealed class SettingsWord : Word
{
    private const int Column = 18;

    /// <summary>Initializes a new instance of the <see cref="SettingsWord"/> class.</summary>
    public SettingsWord()
        : base("settings", "settings", "all settings; a name alone explains one")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.ShowRows(this);
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        Switch of = console.Switch;
        TextOutput output = console.Output;
        if (row < SettingsTable.Count)
        {
            SettingId id = (SettingId)row;
            Setting setting = SettingsTable.Row(id);
            output.Column(setting.Name, Column);
            ValueText.Value(output, setting, of.Settings[id]);
            if (of.Settings[id] != of.SavedSettings[id])
            {
                output.Text("  (saved: ");
                ValueText.Value(output, setting, of.SavedSettings[id]).Text(")");
            }

            output.End();
            return true;
        }

        if (row == SettingsTable.Count && of.Settings.Differences(of.SavedSettings) > 0)
        {
            console.Say("Not saved: 'save' keeps them, 'undo' drops them.");
            return true;
        }

        return false;
    }
}
