using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>One short word for each state, for lines that a program reads.</summary>
public static class StateText
{
    /// <summary>Gives the word.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The word.</returns>
    public static string Name(VacuumState state)
    {
        switch (state)
        {
            case VacuumState.Idle:
                return "idle";
            case VacuumState.Starting:
                return "starting";
            case VacuumState.Following:
                return "on";
            case VacuumState.RunningOn:
                return "run-on";
            case VacuumState.ByHand:
                return "by-hand";
            case VacuumState.AwaitingStop:
                return "until-stop";
            case VacuumState.Held:
                return "held";
            default:
                return "fault";
        }
    }
}
