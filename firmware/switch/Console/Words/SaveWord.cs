namespace NanoDustSwitch.Firmware;

/// <summary>Keeps the settings in flash.</summary>
public sealed class SaveWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="SaveWord"/> class.</summary>
    public SaveWord()
        : base("save", "save", "keep the settings over a power cut")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        SettingsSave save = console.Switch.Desk.RequestSave();
        console.Say(save == SettingsSave.Done ? "Saved."
            : save == SettingsSave.Failed ? "The flash failed; the settings are in use but not kept. Try again."
            : "Will be saved as soon as tool and vacuum are off.");
    }
}
