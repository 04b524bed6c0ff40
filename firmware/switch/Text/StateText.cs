using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The word for each state, the same in lines for a program, charts, pictures and pages.</summary>
public static class StateText
{
    /// <summary>In the place of the state's word while the vacuum runs with its relay told to open.</summary>
    public const string Stuck = "stuck-on";

    // Made once, because on the device every use of a text literal makes a new string, and the loop must not allocate.
    private static readonly string[] s_names = Build();
    private static readonly string s_stuck = Stuck;

    /// <summary>Gives the word.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The word.</returns>
    public static string Name(VacuumState state)
    {
        return s_names[(int)state];
    }

    /// <summary>Gives the word for how the switch stands.</summary>
    /// <param name="core">Its core.</param>
    /// <returns>The state's word, or <see cref="Stuck"/>.</returns>
    public static string Of(DetectionCore core)
    {
        return core.Faults.IsVacuumStuck ? s_stuck : Name(core.Vacuum.State);
    }

    private static string[] Build()
    {
        string[] names = new string[VacuumTable.States];
        names[(int)VacuumState.Idle] = "idle";
        names[(int)VacuumState.Starting] = "starting";
        names[(int)VacuumState.On] = "on";
        names[(int)VacuumState.RunOn] = "run-on";
        names[(int)VacuumState.ByHand] = "by-hand";
        names[(int)VacuumState.UntilStop] = "until-stop";
        names[(int)VacuumState.Held] = "held";
        names[(int)VacuumState.Fault] = "fault";
        return names;
    }
}
