using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Holds the vacuum off, for emptying the bin.</summary>
public sealed class HoldWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="HoldWord"/> class.</summary>
    public HoldWord()
        : base("hold", "hold", "held off until 'vacuum auto'; unplug before you reach in")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.Switch.Handle(VacuumEvent.Hold);
        WhyText.Write(console.Output, console.Switch);
        console.Output.End();
    }
}
