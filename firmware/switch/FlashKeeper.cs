using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Writes to flash at moments when that does no harm. During a write the board cannot read the sensor, so a write waits until
/// tool and vacuum are off, and one step does at most one write.
/// </summary>
public sealed class FlashKeeper
{
    // The event log is written at most once in ten minutes, to spare the flash; at most once a minute when it has something new
    // about what keeps the vacuum off.
    private const long LogPeriodMicroseconds = 10 * Time.Minute;
    private const long UrgentPeriodMicroseconds = Time.Minute;

    // What was learned of the tools is written more often, for an evening of three cuts must not be forgotten; on a slow board,
    // which knows no tools, as seldom as the log.
    private const long ToolsPeriodMicroseconds = 10 * Time.Second;

    // Run hours, what was learned of the tools, and the log are written within this time after the vacuum has gone off. The relay
    // then has to stay open for the restart-gap in any case, 0.5 s by default. The write is over by then, so no tool's start has
    // to wait for it.
    private const long JustOffMicroseconds = 100 * Time.Millisecond;

    private readonly DetectionCore _core;
    private readonly BootRecord _boot;
    private readonly RunHours _hours;
    private readonly KnownTools _tools;
    private readonly EventLog _log;
    private readonly SettingsDesk _desk;
    private readonly Journal _journal;
    private readonly SerialConsole _console;
    private readonly Sounder _sounder;

    // Kept in fields, because on the device every use of a text literal makes a new string, and the loop must not allocate.
    private readonly string _trouble = Sounder.Trouble;
    private readonly string _holdAtRisk = "This hold will not outlive a power cut: the flash failed.";
    private long _nextLog;
    private long _nextUrgentLog;
    private long _nextTools;
    private bool _isRiskSounded;
    private bool _isRiskTold;

    /// <summary>Initializes a new instance of the <see cref="FlashKeeper"/> class.</summary>
    /// <param name="core">Tells whether tool and vacuum are off.</param>
    /// <param name="boot">The boot record.</param>
    /// <param name="hours">The run hours.</param>
    /// <param name="tools">What is known of the tools.</param>
    /// <param name="log">The event log.</param>
    /// <param name="desk">The settings.</param>
    /// <param name="journal">Takes the log entry that the filter is due.</param>
    /// <param name="console">Tells the person whether the settings were saved, and that a hold is not.</param>
    /// <param name="sounder">Tells that a hold is not kept.</param>
    public FlashKeeper(
        DetectionCore core,
        BootRecord boot,
        RunHours hours,
        KnownTools tools,
        EventLog log,
        SettingsDesk desk,
        Journal journal,
        SerialConsole console,
        Sounder sounder)
    {
        _core = core;
        _boot = boot;
        _hours = hours;
        _tools = tools;
        _log = log;
        _desk = desk;
        _journal = journal;
        _console = console;
        _sounder = sounder;
    }

    /// <summary>Does one of the writes that are waiting, if this is a good moment for it.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        if ((_core.Faults.Standing | _boot.Lockouts) != 0)
        {
            KeepLockouts();
        }

        // The boot record does not wait for the tool to stop. It says whether a person holds the vacuum off, and that must
        // survive a power cut which comes while the tool still runs. The relay is open, so nothing that matters misses the
        // readings.
        if (_boot.IsWriteWaiting && now >= _boot.NextTry && _core.IsRelayResting)
        {
            _boot.WriteWaiting(now);
            _isRiskSounded = _isRiskSounded && _boot.HasFailed;
            _isRiskTold = _isRiskTold && _boot.HasFailed;
            return;
        }

        if (_boot.HasFailed)
        {
            TellOfRisk(now);
        }

        if (_log.IsUrgent && now >= _nextUrgentLog && _core.IsRelayResting && MayLog())
        {
            SaveLog(now);
            return;
        }

        // Nobody is waiting for the log, for what was learned, nor for run hours that have merely grown, so writing them must be
        // in nobody's way. They are written just after the vacuum has gone off, or once nobody has worked for ten minutes.
        long off = now - _core.Vacuum.Since;
        bool isGoodTime = off <= JustOffMicroseconds || off >= LogPeriodMicroseconds;
        bool areToolsWaiting = now >= _tools.WriteAt;
        if (!isGoodTime && !_desk.IsSaveWaiting && !_hours.IsWriteWaiting && !areToolsWaiting)
        {
            return;
        }

        bool isLogWaiting = isGoodTime && _log.IsDirty && now >= _nextLog && MayLog();
        bool areHoursWaiting = _hours.IsWriteWaiting || (isGoodTime && _hours.IsWorthWriting);
        areToolsWaiting |= isGoodTime && now >= _nextTools && _tools.IsWorthWriting;
        if ((!_desk.IsSaveWaiting && !areHoursWaiting && !areToolsWaiting && !isLogWaiting) || !_core.IsQuiet)
        {
            return;
        }

        if (_desk.IsSaveWaiting)
        {
            SaveSettings(now);
        }
        else if (areHoursWaiting)
        {
            SaveHours(now);
        }
        else if (isLogWaiting)
        {
            SaveLog(now);
        }
        else
        {
            SaveTools(now);
        }
    }

    // A fault that waits for a person still does after a power cut.
    private void KeepLockouts()
    {
        int lockouts = _core.Faults.ToRecall();
        if (lockouts != _boot.Lockouts)
        {
            _boot.Lockouts = lockouts;
            _boot.RequestWrite();
        }
    }

    // A board that restarts again and again does not get to wear out its flash with what that adds to the log.
    private bool MayLog()
    {
        return !_core.Faults[Fault.RestartLoop].IsActive;
    }

    private void TellOfRisk(long now)
    {
        if (!_boot.IsHoldAtRisk)
        {
            _isRiskTold = false;
            _isRiskSounded = false;
            return;
        }

        if (!_isRiskSounded)
        {
            _isRiskSounded = true;
            _sounder.Play(_trouble, now);
            _journal.Note(LogKind.PartFailed, (int)BoardParts.Flash, 0, 0, now);
        }

        if (!_isRiskTold)
        {
            _isRiskTold = _console.Interject(_holdAtRisk);
        }
    }

    private void SaveLog(long now)
    {
        _nextLog = now + LogPeriodMicroseconds;
        _nextUrgentLog = now + UrgentPeriodMicroseconds;
        _log.Save();
    }

    private void SaveSettings(long now)
    {
        bool isSaved = _desk.RequestSave(now) == SettingsSave.Done;
        _console.Interject(isSaved ? "Saved." : "The flash failed; nothing was saved.");
    }

    private void SaveTools(long now)
    {
        bool isAsked = now >= _tools.WriteAt;
        _nextTools = now + (_core.Faults[Fault.SlowBoard].IsActive ? LogPeriodMicroseconds : ToolsPeriodMicroseconds);
        if (!_tools.Save() && isAsked)
        {
            TellNotKept();
        }
    }

    private void TellNotKept()
    {
        _console.Interject("The flash failed; what you said of the tools is not kept over a power cut.");
    }

    private void SaveHours(long now)
    {
        _hours.IsWriteWaiting = false;
        _hours.Save();
        if (!_hours.IsFilterNoted && _hours.IsFilterDue(_desk.InUse[SettingId.FilterReminder]))
        {
            _hours.IsFilterNoted = true;
            _journal.Note(LogKind.FilterDue, 0, 0, _hours.FilterSeconds / 60, now);
        }
    }
}
