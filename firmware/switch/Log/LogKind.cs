namespace NanoDustSwitch.Firmware;

/// <summary>Kinds of entries in the event log. The numbers are stored in flash: a number never changes its meaning.</summary>
public enum LogKind
{
    /// <summary>
    /// The vacuum's state changed. First: the old state; second: the new one; figure: the vacuum event, and from bit 8 on the
    /// number of the tool that it probably was.
    /// </summary>
    StateChanged = 0,

    /// <summary>A fault came up. First: the fault; second: 1 when it stays until cleared; figure: what was seen of it.</summary>
    FaultRaised = 1,

    /// <summary>A fault ended. First: the fault; figure: after how many seconds.</summary>
    FaultEnded = 2,

    /// <summary>The longest run ends soon. Figure: in how many seconds.</summary>
    LongRunAhead = 3,

    /// <summary>
    /// The relay's heartbeat paused for too long. First: how often in the last hour, 0 where that is not known; figure: for how
    /// many ms.
    /// </summary>
    RelayLost = 4,

    /// <summary>The board came up. First: the reason; figure: restarts in a row.</summary>
    CameUp = 5,

    /// <summary>The settings were saved.</summary>
    Saved = 6,

    /// <summary>The settings could not be saved, because the flash failed.</summary>
    SaveFailed = 7,

    /// <summary>A person cleared the faults.</summary>
    Cleared = 8,

    /// <summary>Settings in flash broke a rule, so others are in use. Figure: how many.</summary>
    FellBack = 9,

    /// <summary>The vacuum's filter is due for a look. Figure: run time since the last one, in minutes.</summary>
    FilterDue = 10,

    /// <summary>The switch was taught a tool. Figure: the new start-at in mA.</summary>
    Taught = 11,

    /// <summary>
    /// A part of the board could not be opened, or the flash failed. First: the part's bit; figure: 1 when the flash is not
    /// mounted.
    /// </summary>
    PartFailed = 12,

    /// <summary>
    /// The relay was opened for a moment to see whether the current on the tool's line goes away with it. First: 1 if it did,
    /// else 0; figure: after how many ms.
    /// </summary>
    Probed = 13,

    /// <summary>
    /// The vacuum has been on for a minute for the same reason, once for each reason of a run. First: the reason; second: 1 when
    /// a hand switched it on while a tool ran; figure: current on the tool's line in mA.
    /// </summary>
    StaysOn = 14,

    /// <summary>
    /// An error that nobody expected, after which the board restarted. First: its <see cref="ErrorKind"/>; second: the
    /// <see cref="StepPlace"/>; figure: restarts of its own making up to then.
    /// </summary>
    Error = 15,

    /// <summary>The boot record could not be read, or one of its two copies, so the vacuum is held off.</summary>
    HoldInDoubt = 16,

    /// <summary>
    /// A burst of current that the vacuum did not follow, since no tool was left after it. Figure: how long it was, in ms.
    /// </summary>
    Burst = 17,

    /// <summary>One of two tools stopped, and the other one still runs. First: its number, as it probably is.</summary>
    ToolStopped = 18,

    /// <summary>The core has sent a notice of a kind that has no entry here.</summary>
    Unknown = 255,
}
