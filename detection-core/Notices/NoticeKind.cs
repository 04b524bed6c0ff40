namespace NanoDustSwitch.Detection;

/// <summary>Kinds of things that the core has to tell, and what the numbers of a <see cref="Notice"/> mean for each.</summary>
public enum NoticeKind
{
    /// <summary>The vacuum's state changed. First: the old state; second: the new one; figure: the event.</summary>
    StateChanged = 0,

    /// <summary>
    /// A fault came up. First: the fault; second: 1 when a person must clear it, else 0; figure: what was seen.
    /// </summary>
    FaultRaised = 1,

    /// <summary>A fault ended. First: the fault; figure: how long it stood, in seconds.</summary>
    FaultEnded = 2,

    /// <summary>The longest run ends soon. Figure: the time left in seconds.</summary>
    LongRunAhead = 3,

    /// <summary>
    /// The relay's heartbeat stopped for too long, so the relay has opened. First: how often in the last hour, 11 at most;
    /// figure: the gap in ms.
    /// </summary>
    RelayLost = 4,

    /// <summary>
    /// The relay was opened for a moment to see whether the current goes with it. First: 1 when it went, else 0; figure: after
    /// how many ms.
    /// </summary>
    Probed = 5,

    /// <summary>
    /// A tool was seen to start and no tool was left before the vacuum followed; told once a minute at most. Figure: how long it
    /// was seen, in ms.
    /// </summary>
    Burst = 6,

    /// <summary>One of two tools has stopped, and the other one still runs. First: its number, as it probably is.</summary>
    ToolStopped = 7,
}
