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

    /// <summary>Writes a setting's value, its range and its line of help.</summary>
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
            console.Words.UnknownSetting(console, name);
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
        if (!SettingsGate.TryRead(row, text, out value, output))
        {
            output.End();
            return;
        }

        SettingChange change = _desk.Change(id, value);
        if (change != SettingChange.Done)
        {
            _desk.Report(output, change, null);
            return;
        }

        output.Text(row.Name).Text(" ");
        ValueText.Value(output, row, value)
            .Text(value != _desk.Saved[id] ? " (not saved yet)" : " (as saved)").End();
    }
}
