namespace NanoDustSwitch.Firmware;

/// <summary>Lists the settings.</summary>
public sealed class SettingsWord : Word
{
    private const int Column = 18;

    private readonly SettingsDesk _desk;

    /// <summary>Initializes a new instance of the <see cref="SettingsWord"/> class.</summary>
    /// <param name="desk">The settings.</param>
    public SettingsWord(SettingsDesk desk)
        : base("settings", "settings", "all settings; a name alone explains one")
    {
        _desk = desk;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.ShowRows(this);
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        TextOutput output = console.Output;
        if (row < SettingsTable.Count)
        {
            SettingId id = (SettingId)row;
            Setting setting = SettingsTable.Row(id);
            output.Column(setting.Name, Column);
            ValueText.Value(output, setting, _desk.InUse[id]);
            if (_desk.InUse[id] != _desk.Saved[id])
            {
                output.Text("  (saved: ");
                ValueText.Value(output, setting, _desk.Saved[id]).Text(")");
            }

            output.End();
            return true;
        }

        if (row == SettingsTable.Count && _desk.InUse.Differences(_desk.Saved) > 0)
        {
            console.Say("Not saved: 'save' keeps them, 'undo' drops them.");
            return true;
        }

        return false;
    }
}
