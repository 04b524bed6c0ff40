using NanoDustSwitch.Detection;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>The states in words and colours.</summary>
internal static class StateLooks
{
    /// <summary>Says what a state is.</summary>
    /// <param name="state">The state.</param>
    /// <returns>A few words.</returns>
    public static string Words(VacuumState state) => state switch
    {
        VacuumState.Idle => "off, waits for a tool",
        VacuumState.Starting => "off, a tool is starting",
        VacuumState.Following => "on, follows the tool",
        VacuumState.RunningOn => "on, runs on",
        VacuumState.ByHand => "on by hand",
        VacuumState.AwaitingStop => "off until the tool stops",
        VacuumState.Held => "held off by hand",
        _ => "off because of a fault",
    };

    /// <summary>Gives its look.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The look.</returns>
    public static Style Look(VacuumState state) => state switch
    {
        VacuumState.Idle => Looks.Usual,
        VacuumState.Following or VacuumState.ByHand => Looks.Running,
        VacuumState.Faulted => Looks.Wrong,
        _ => Looks.Passing,
    };
}
