using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Adds entries to the event log, each with the boot, the time and the tool's current at that moment.</summary>
public sealed class Journal
{
    private readonly EventLog _log;
    private readonly BootRecord _boot;
    private readonly DetectionCore _core;

    /// <summary>Initializes a new instance of the <see cref="Journal"/> class.</summary>
    /// <param name="log">Where the entries are kept.</param>
    /// <param name="boot">Which boot this is.</param>
    /// <param name="core">The core, whose notices are logged.</param>
    public Journal(EventLog log, BootRecord boot, DetectionCore core)
    {
        _log = log;
        _boot = boot;
        _core = core;
    }

    /// <summary>Adds an entry to the event log.</summary>
    /// <param name="kind">What happened. It says what the three numbers mean.</param>
    /// <param name="first">First number, 0 to 255.</param>
    /// <param name="second">Second number, 0 to 255.</param>
    /// <param name="figure">Third number: what was measured.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Note(LogKind kind, int first, int second, int figure, long now)
    {
        bool wasDirty = _log.IsDirty;
        LogEntry entry = _log.Add();
        entry.Boot = _boot.Number;
        entry.Seconds = (int)(now / Time.Second);
        entry.Kind = kind;
        entry.First = first;
        entry.Second = second;
        entry.Figure = figure;
        entry.Milliamperes = _core.SwingMilliamperes;
        if (kind == LogKind.CameUp || kind == LogKind.Burst || kind == LogKind.ToolStopped)
        {
            // That the board came up, a burst, or that one of two tools stopped, is not worth a write by itself; it is written
            // with what happens next.
            _log.IsDirty = wasDirty;
        }
        else if (figure != FaultState.FromBefore && LogKinds.IsEvidence(entry))
        {
            _log.IsUrgent = true;
        }
    }

    /// <summary>Takes the core's notices and logs those that are worth an entry.</summary>
    /// <param name="isGuiding">Whether a guide is under way. It tells the person what it does with the vacuum, so these changes
    /// of state are not logged.</param>
    /// <param name="now">Time in microseconds.</param>
    public void TakeNotices(bool isGuiding, long now)
    {
        Notice notice = _core.Notices.Take();
        while (notice != null)
        {
            bool isWorthLogging = notice.Kind != NoticeKind.StateChanged
                || (!isGuiding && EventText.IsWorthLogging((VacuumState)notice.First, (VacuumState)notice.Second));
            if (isWorthLogging)
            {
                // When the vacuum is switched off by hand, the core waits for the tool's stop even when no tool runs, and ends
                // that wait at once. The log says simply that the vacuum is off.
                bool isOver = notice.Kind == NoticeKind.StateChanged && notice.Second == (int)VacuumState.UntilStop
                    && !_core.IsToolRunning;
                int figure = notice.Figure;
                if (notice.Kind == NoticeKind.StateChanged)
                {
                    figure |= (_core.Vacuum.Guess.Tool + 1) << EventText.ToolShift;
                }

                Note(LogKinds.Of(notice.Kind), notice.First, isOver ? (int)VacuumState.Idle : notice.Second, figure, now);
            }

            notice = _core.Notices.Take();
        }
    }
}
