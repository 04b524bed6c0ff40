namespace NanoDustSwitch.Detection;

/// <summary>Kinds of things the core has to tell.</summary>
public enum NoticeKind
{
    /// <summary>The vacuum's state changed: first is the old state, second the new one, figure the event.</summary>
    StateChanged = 0,

    /// <summary>A fault came up: first is the fault, second 1 when it stays until cleared, figure what was seen.</summary>
    FaultRaised = 1,

    /// <summary>A fault ended: first is the fault, figure its length in seconds.</summary>
    FaultEnded = 2,

    /// <summary>The longest run ends soon: figure is the time left in seconds.</summary>
    LongRunAhead = 3,

    /// <summary>The relay's heartbeat stopped for too long: figure is the gap in ms.</summary>
    RelayLost = 4,

    /// <summary>
    /// The relay was opened for a moment to see whether the current goes: first is 1 when it did, figure the time in ms.
    /// </summary>
    Probed = 5,
}
