using NanoDustSwitch.Detection;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>The colours of the states.</summary>
internal static class StateLooks
{
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
