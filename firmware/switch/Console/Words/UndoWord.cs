namespace NanoDustSwitch.Firmware;

/// <summary>Goes back to the saved settings.</summary>
public sealed class UndoWord : Word
{
    private readonly SettingsDesk _desk;

    /// <summary>Initializes a new instance of the <see cref="UndoWord"/> class.</summary>
    /// <param name="desk">The settings.</param>
    public UndoWord(SettingsDesk desk)
        : base("undo", "undo", "go back to the settings that were saved")
    {
        _desk = desk;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        if (_desk.IsAlarmNeeded)
        {
            console.Say("Not while the vacuum runs: its sensor's setting must stay.");
            return;
        }

        int changed = _desk.Undo();
        if (changed == 0)
        {
            console.Say("Nothing to undo: all settings are as saved.");
        }
        else
        {
            console.Output.Number(changed).Text(changed == 1 ? " setting is" : " settings are").Text(" as saved again.").End();
        }
    }
}
