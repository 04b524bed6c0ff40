namespace NanoDustSwitch.Detection;

/// <summary>What can happen to the vacuum control.</summary>
public enum VacuumEvent
{
    /// <summary>The tool has begun to run.</summary>
    ToolStarted = 0,

    /// <summary>The tool has stopped.</summary>
    ToolStopped = 1,

    /// <summary>The time of the present state is over: start delay, longest run, run-on or by-hand limit.</summary>
    TimeUp = 2,

    /// <summary>A person wants the vacuum on.</summary>
    HandOn = 3,

    /// <summary>A person wants the vacuum off for this run of the tool.</summary>
    HandOff = 4,

    /// <summary>A person hands the vacuum back to the switch.</summary>
    Auto = 5,

    /// <summary>A person holds the vacuum off.</summary>
    Hold = 6,

    /// <summary>A fault that keeps the vacuum off has come up.</summary>
    FaultRose = 7,

    /// <summary>The last such fault has ended.</summary>
    FaultEnded = 8,
}
