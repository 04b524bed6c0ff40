using NanoDustSwitch.Detection;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>The colours of the states.</summary>
internal static class StateLooks
{
    /// <summary>Gives the look of how the switch stands.</summary>
    /// <param name="core">Its core.</param>
    /// <returns>The look.</returns>
    public static Style Look(DetectionCore core) => core.Faults.IsVacuumStuck ? Looks.Wrong : Look(core.Vacuum.State);

    /// <summary>Gives a state's look.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The look.</returns>
    public static Style Look(VacuumState state) => state switch
    {
        VacuumState.Idle => Looks.Usual,
        VacuumState.On or VacuumState.ByHand => Looks.Running,
        VacuumState.Fault => Looks.Wrong,
        _ => Looks.Passing,
    };
}
