using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>A look at the shop and the switch at one time, for the chart and the CSV file.</summary>
/// <param name="Seconds">Time.</param>
/// <param name="ToolAmperes">True rms current of the tool's line over the last cycle.</param>
/// <param name="VacuumAmperes">Rms current of the vacuum.</param>
/// <param name="SwingAmperes">What the switch sees, as the rms current of a sine.</param>
/// <param name="StartAmperes">Its start level.</param>
/// <param name="StopAmperes">Its stop level.</param>
/// <param name="State">Its state.</param>
/// <param name="IsCommanded">Whether it commands the relay closed.</param>
/// <param name="IsClosed">Whether the relay's contact is closed.</param>
/// <param name="IsStuck">Whether it says that the vacuum runs with its relay told to open.</param>
internal readonly record struct TracePoint(
    double Seconds,
    double ToolAmperes,
    double VacuumAmperes,
    double SwingAmperes,
    double StartAmperes,
    double StopAmperes,
    VacuumState State,
    bool IsCommanded,
    bool IsClosed,
    bool IsStuck)
{
    /// <summary>Gets the word for how the switch stands.</summary>
    public string StateName => IsStuck ? StateText.Stuck : StateText.Name(State);
}
