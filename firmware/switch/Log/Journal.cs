using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Writes what happens into the event log, with the boot, the time and the tool's current of that moment.</summary>
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
    /// <param name="kind">What happened.</param>
    /// <param name="first">First subject.</param>
    /// <param name="second">Second subject.</param>
    /// <param name="figure">Figure.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Note(LogKind kind, int first, int second, int figure, long now)
    {
        LogEntry entry = _log.Add();
        entry.Boot = _boot.Number;
        entry.Seconds = (int)(now / Time.Second);
        entry.Kind = kind;
        entry.First = first;
        entry.Second = second;
        entry.Figure = figure;
        entry.Milliamperes = _core.SwingMilliamperes;
    }

    /// <summary>Takes the core's notices into the log.</summary>
    /// <param name="isGuiding">Whether a guide is under way, which tells by itself what it does with the vacuum.</param>
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
                // The core passes through the wait for the tool's stop also when there is no tool to wait for.
                bool isOver = notice.Kind == NoticeKind.StateChanged && notice.Second == (int)VacuumState.UntilStop
                    && !_core.IsToolRunning;
                Note(LogKinds.Of(notice.Kind), notice.First, isOver ? (int)VacuumState.Idle : notice.Second, notice.Figure, now);
            }

            notice = _core.Notices.Take();
        }
    }
}
