namespace NanoDustSwitch.Detection;

/// <summary>What the switch is doing about the vacuum.</summary>
public enum VacuumState
{
    /// <summary>Off; waits for a tool.</summary>
    Idle = 0,

    /// <summary>Off; a tool runs and the start delay is counting.</summary>
    Starting = 1,

    /// <summary>On, because a tool runs.</summary>
    On = 2,

    /// <summary>On; the tool has stopped and the run-on is counting.</summary>
    RunOn = 3,

    /// <summary>On, by hand, until the by-hand limit.</summary>
    ByHand = 4,

    /// <summary>Off until the tool has stopped: switched off by hand, or the tool ran too long.</summary>
    UntilStop = 5,

    /// <summary>Off, held by a person until released by a person.</summary>
    Held = 6,

    /// <summary>Off because of a fault.</summary>
    Fault = 7,
}
