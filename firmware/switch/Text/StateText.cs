using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The word for each state, the same in lines for a program, charts, pictures and pages.</summary>
public static class StateText
{
    // Made once, because on the device every use of a text literal makes a new string, and the loop must not allocate.
    private static readonly string[] s_names = Build();

    /// <summary>Gives the word.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The word.</returns>
    public static string Name(VacuumState state)
    {
        return s_names[(int)state];
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
