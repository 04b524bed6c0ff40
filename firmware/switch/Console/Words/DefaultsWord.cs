namespace NanoDustSwitch.Firmware;

/// <summary>Sets all settings to their defaults, after asking.</summary>
public sealed class DefaultsWord : Word
{
    private readonly SettingsDesk _desk;
    private bool _for230Volts;

    /// <summary>Initializes a new instance of the <see cref="DefaultsWord"/> class.</summary>
    /// <param name="desk">The settings.</param>
    public DefaultsWord(SettingsDesk desk)
        : base("defaults", "defaults [230]", "all settings to their defaults (for 230 V); asks first")
    {
        _desk = desk;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        if (rest.Length > 0 && rest != "230")
        {
            console.Say("Type 'defaults', or 'defaults 230' for 230 V mains.");
            return;
        }

        if (_desk.IsAlarmNeeded)
        {
            console.Say("Not while the vacuum runs: its sensor's setting must stay.");
            return;
        }

        _for230Volts = rest.Length > 0;
        console.Ask(this, "All settings to their defaults?");
    }

    /// <inheritdoc/>
    public override void Answer(SerialConsole console, bool isYes)
    {
        if (!isYes || _desk.IsAlarmNeeded)
        {
            console.Say("Nothing was changed.");
            return;
        }

        _desk.Report(
            console.Output, _desk.UseDefaults(_for230Volts), "All settings are at their defaults (not saved yet).");
    }
}
