namespace NanoDustSwitch.UnitTests.Sequences;

/// <summary>What can happen to the vacuum's part of the core, seen from outside.</summary>
internal enum SequenceEvent
{
    ToolStartsOrStops,
    FaultRisesOrEnds,

    /// <summary>
    /// The time of the present state runs out: start delay, surge, run-on, by-hand limit, warning, longest
    /// run.
    /// </summary>
    TimeUp,

    /// <summary>Shorter than the restart gap.</summary>
    AMoment,

    /// <summary>Longer than the minute in which starts are counted.</summary>
    APause,
    HandOn,
    HandOff,
    Auto,
    Hold,

    /// <summary>The heartbeat stopped for so long that the driver may have let go.</summary>
    RelayLost,

    /// <summary>The same settings are handed in again.</summary>
    SettingsUsed,
}
