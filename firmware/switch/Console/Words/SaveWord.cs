namespace NanoDustSwitch.Firmware;

/// <summary>Saves the settings to flash.</summary>
public sealed class SaveWord : Word
{
    private readonly SettingsDesk _desk;

    /// <summary>Initializes a new instance of the <see cref="SaveWord"/> class.</summary>
    /// <param name="desk">The settings.</param>
    public SaveWord(SettingsDesk desk)
        : base("save", "save", "keep the settings over a power cut")
    {
        _desk = desk;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        SettingsSave save = _desk.RequestSave(console.Now);
        console.Say(save == SettingsSave.Done ? "Saved."
            : save == SettingsSave.Failed ? "The flash failed; the settings are in use but not kept. Try again."
            : "Will be saved as soon as tool and vacuum have stopped.");
    }
}
