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
        Switch of = console.Switch;
        if (of.IsQuiet)
        {
            console.Say(of.Desk.Save() ? "Saved." : "The flash failed; the settings are in use but not kept. Try again.");
            return;
        }

        // A write to flash stalls the readings for up to some hundred milliseconds; with the vacuum on that is no time for it.
        of.Desk.IsSaveWaiting = true;
        console.Say("Will be saved as soon as tool and vacuum are off.");
    }
}
