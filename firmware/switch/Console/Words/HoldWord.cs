using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Holds the vacuum off, for example to empty its bin.</summary>
public sealed class HoldWord : Word
{
    private readonly Controls _controls;
    private readonly WhyText _why;

    /// <summary>Initializes a new instance of the <see cref="HoldWord"/> class.</summary>
    /// <param name="controls">What a person can do with the switch.</param>
    /// <param name="why">Writes why the vacuum is on or off.</param>
    public HoldWord(Controls controls, WhyText why)
        : base("hold", "hold", "held off until 'vacuum auto'; unplug before you reach in")
    {
        _controls = controls;
        _why = why;
    }

    /// <summary>Gets true: whoever wants the vacuum off is obeyed, whatever stands behind it.</summary>
    public override bool TakesMore
    {
        get { return true; }
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        _controls.Handle(VacuumEvent.Hold, console.Now);
        _why.Answer(console.Output, console.Now);
        console.Say("Held, not isolated: unplug before you reach in.");
    }
}
