namespace NanoDustSwitch.Firmware;

/// <summary>Changes a setting, or explains it.</summary>
public sealed class SetWord : Word
{
    private readonly SettingsDesk _desk;

    /// <summary>Initializes a new instance of the <see cref="SetWord"/> class.</summary>
    /// <param name="desk">The settings.</param>
    public SetWord(SettingsDesk desk)
        : base("set", "NAME VALUE", "change a setting at once; also 'set NAME VALUE'")
    {
        _desk = desk;
    }

    /// <summary>Explains a setting: value, range, help.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="settings">The settings in use.</param>
    /// <param name="index">Its row in the table.</param>
    public static void Explain(TextOutput output, SettingValues settings, int index)
    {
        Setting row = SettingsTable.Row((SettingId)index);
        output.Text(row.Name).Text(" ");
        ValueText.Value(output, row, settings[(SettingId)index]).Text(" (");
        ValueText.Range(output, row).Text("): ").Text(row.Help).End();
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        int blank = rest.IndexOf(' ');
        string name = blank < 0 ? rest : rest.Substring(0, blank);
        int index = SettingsTable.Find(name);
        if (name.Length == 0)
        {
            console.Say("Say which: 'set NAME VALUE', for example 'set run-on 8'. 'settings' lists the names.");
        }
        else if (index < 0)
        {
            console.Words.Unknown(console, name);
        }
        else if (blank < 0)
        {
            Explain(console.Output, _desk.InUse, index);
        }
        else
        {
            Change(console, index, rest.Substring(blank + 1));
        }
    }

    private void Change(SerialConsole console, int index, string text)
    {
        SettingId id = (SettingId)index;
        Setting row = SettingsTable.Row(id);
        TextOutput output = console.Output;
        int value;
        if (!ValueParser.TryParse(row, text, out value))
        {
            output.Text("'").Text(text).Text("' is no value for ").Text(row.Name).Text("; allowed is ");
            ValueText.Range(output, row).Text(".").End();
            return;
        }

        if (!row.Allows(value))
        {
            output.Text(row.Name).Text(" cannot be ").Text(text).Text("; allowed is ");
            ValueText.Range(output, row).Text(".").End();
            return;
        }

        SettingChange change = _desk.Change(id, value);
        if (change == SettingChange.BeyondSensor)
        {
            output.Text("start-at would be more than the sensor can show with its gain and turns: ").Amperes(_desk.LargestStartAt())
                .Text(" at most now; nothing was changed.").End();
            return;
        }

        if (change == SettingChange.LevelsWouldCross)
        {
            output.Text("start-at must stay above stop-below (now ");
            ValueText.Value(output, SettingsTable.Row(SettingId.StartAt), _desk.InUse[SettingId.StartAt]).Text(" and ");
            ValueText.Value(output, SettingsTable.Row(SettingId.StopBelow), _desk.InUse[SettingId.StopBelow]).Text("); nothing was changed.").End();
            return;
        }

        output.Text(row.Name).Text(" ");
        ValueText.Value(output, row, value)
            .Text(value != _desk.Saved[id] ? " (not saved yet)" : " (as saved)").End();
    }
}
