namespace NanoDustSwitch.Firmware;

/// <summary>Restarts the board, after a yes.</summary>
public sealed class RestartWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="RestartWord"/> class.</summary>
    public RestartWord()
        : base("restart", "restart", "restart the board; asks first, the vacuum goes off")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.Ask(
            this,
            console.Switch.Settings.Differences(console.Switch.SavedSettings) > 0
                ? "Restart and lose the settings that are not saved?"
                : "Restart the board?");
    }

    /// <inheritdoc/>
    public override void Answer(SerialConsole console, bool isYes)
    {
        if (isYes)
        {
            console.Switch.RestartAsked();
        }
        else
        {
            console.Say("No restart.");
        }
    }
}
