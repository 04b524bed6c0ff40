namespace NanoDustSwitch.Firmware;

/// <summary>Changes a setting, or explains it.</summary>
public sealed class SetWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="SetWord"/> class.</summary>
    public SetWord()
        : base("set", "NAME VALUE", "change a setting at once; also 'set NAME VALUE'")
    {
    }

    /// <summary>Explains a setting: value, range, help.</summary>
    /// <param name="console">The console.</param>
    /// <param name="index">Its row in the table.</param>
    public static void Explain(SerialConsole console, int index)
    {
        Setting row = SettingsTable.Row((SettingId)index);
        TextOutput output = console.Output;
        output.Text(row.Name).Text(" ");
        ValueText.Value(output, row, console.Switch.Settings[(SettingId)index]).Text(" (");
        ValueText.Range(output, row).Text("): ").Text(row.Help).End();
    }

    /// <summary>Says what came of a change, or why nothing was changed.</summary>
    /// <param name="console">The console.</param>
    /// <param name="change">What came of it.</param>
    /// <param name="done">What to say when it was done.</param>
    public static void Report(SerialConsole console, SettingChange change, string done)
    {
        if (change == SettingChange.Done)
        {
            console.Say(done);
            return;
        }

        SettingsDesk desk = console.Switch.Desk;
        desk.Gate.Explain(console.Output, change, new SettingsDraft(desk.InUse)).Text("; nothing was changed.").End();
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
            Explain(console, index);
        }
        else
        {
            Change(console, index, rest.Substring(blank + 1));
        }
    }

    private static void Change(SerialConsole console, int index, string text)
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

        SettingChange change = console.Switch.Desk.Change(id, value);
        if (change != SettingChange.Done)
        {
            Report(console, change, null);
            return;
        }

        output.Text(row.Name).Text(" ");
        ValueText.Value(output, row, value)
            .Text(value != console.Switch.SavedSettings[id] ? " (not saved yet)" : " (as saved)").End();
    }
}
