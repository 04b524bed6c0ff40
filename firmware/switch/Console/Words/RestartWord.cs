namespace NanoDustSwitch.Firmware;

/// <summary>Restarts the board, after asking.</summary>
public sealed class RestartWord : Word
{
    private readonly Controls _controls;
    private readonly SettingsDesk _desk;

    /// <summary>Initializes a new instance of the <see cref="RestartWord"/> class.</summary>
    /// <param name="controls">What a person can do with the switch.</param>
    /// <param name="desk">The settings.</param>
    public RestartWord(Controls controls, SettingsDesk desk)
        : base("restart", "restart", "restart the board; asks first, the vacuum goes off")
    {
        _controls = controls;
        _desk = desk;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.Ask(
            this,
            _desk.InUse.Differences(_desk.Saved) > 0
                ? "Restart and lose the settings that are not saved?"
                : "Restart the board?");
    }

    /// <inheritdoc/>
    public override void Answer(SerialConsole console, bool isYes)
    {
        if (isYes)
        {
            _controls.IsRestartAsked = true;
        }
        else
        {
            console.Say("No restart.");
        }
    }
}
