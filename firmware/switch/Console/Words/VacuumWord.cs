using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Switches the vacuum on or off by hand, or hands it back to the switch.</summary>
public sealed class VacuumWord : Word
{
    private readonly Controls _controls;
    private readonly WhyText _why;

    /// <summary>Initializes a new instance of the <see cref="VacuumWord"/> class.</summary>
    /// <param name="controls">What a person can do with the switch.</param>
    /// <param name="why">Writes why the vacuum is on or off.</param>
    public VacuumWord(Controls controls, WhyText why)
        : base("vacuum", "vacuum on|off|auto", "by hand: on, off until the tool stops, or back to auto")
    {
        _controls = controls;
        _why = why;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        // Off is obeyed whatever stands behind it; nothing else is.
        switch (rest.StartsWith("off ") ? "off" : rest)
        {
            case "on":
                _controls.Handle(VacuumEvent.HandOn, console.Now);
                break;
            case "off":
                _controls.Handle(VacuumEvent.HandOff, console.Now);
                break;
            case "auto":
                _controls.Handle(VacuumEvent.Auto, console.Now);
                break;
            default:
                console.Say("Type 'vacuum on', 'vacuum off' or 'vacuum auto'.");
                return;
        }

        _why.Answer(console.Output, console.Now);
    }
}
