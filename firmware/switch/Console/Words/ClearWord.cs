using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Clears all faults that keep the vacuum off.</summary>
public sealed class ClearWord : Word
{
    private readonly DetectionCore _core;
    private readonly Controls _controls;

    /// <summary>Initializes a new instance of the <see cref="ClearWord"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="controls">What a person can do with the switch.</param>
    public ClearWord(DetectionCore core, Controls controls)
        : base("clear", "clear", "clear the faults; one that is still there comes back")
    {
        _core = core;
        _controls = controls;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        _controls.ClearFaults(console.Now);
        console.Say(_core.Faults.IsVacuumStuck
            ? "That stays while its current flows; all else is cleared."
            : "Cleared. A fault that is still there comes back by itself.");
    }
}
