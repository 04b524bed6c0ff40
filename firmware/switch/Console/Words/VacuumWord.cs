using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Works the vacuum by hand.</summary>
public sealed class VacuumWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="VacuumWord"/> class.</summary>
    public VacuumWord()
        : base("vacuum", "vacuum on|off|auto", "by hand: on, off until the tool stops, or back to auto")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        switch (rest)
        {
            case "on":
                console.Switch.Handle(VacuumEvent.HandOn);
                break;
            case "off":
                console.Switch.Handle(VacuumEvent.HandOff);
                break;
            case "auto":
                console.Switch.Handle(VacuumEvent.Auto);
                break;
            default:
                console.Say("Type 'vacuum on', 'vacuum off' or 'vacuum auto'.");
                return;
        }

        WhyText.Write(console.Output, console.Switch);
        console.Output.End();
    }
}
