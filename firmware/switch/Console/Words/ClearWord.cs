namespace NanoDustSwitch.Firmware;

/// <summary>Clears faults that stay until cleared.</summary>
public sealed class ClearWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="ClearWord"/> class.</summary>
    public ClearWord()
        : base("clear", "clear", "clear the faults; one that is still there comes back")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.Switch.ClearFaults();
        console.Say("Cleared. A fault that is still there comes back by itself.");
    }
}
