using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Writes to flash at moments when that does no harm. During a write the board cannot read the sensor, so a write waits until
/// tool and vacuum are off, and one step does at most one write.
/// </summary>
public sealed class FlashKeeper
{
    // The event log is written at most once in ten minutes, to spare the flash.
    private const long LogPeriodMicroseconds = 10 * Time.Minute;

    // Run hours and log are written within this time after the vacuum has gone off. The relay then has to stay open for the
    // restart-gap in any case, 0.5 s by default. The write is over by then, so no tool's start has to wait for it.
    private const long JustOffMicroseconds = 100 * Time.Millisecond;

    private readonly DetectionCore _core;
    private readonly BootRecord _boot;
    private readonly RunHours _hours;
    private readonly EventLog _log;
    private readonly SettingsDesk _desk;
    private readonly Journal _journal;
    private readonly SerialConsole _console;
    private long _nextLog;

    /// <summary>Initializes a new instance of the <see cref="FlashKeeper"/> class.</summary>
    /// <param name="core">Tells whether tool and vacuum are off.</param>
    /// <param name="boot">The boot record.</param>
    /// <param name="hours">The run hours.</param>
    /// <param name="log">The event log.</param>
    /// <param name="desk">The settings.</param>
    /// <param name="journal">Takes the log entry that the filter is due.</param>
    /// <param name="console">Tells the person whether the settings were saved.</param>
    public FlashKeeper(
        DetectionCore core,
        BootRecord boot,
        RunHours hours,
        EventLog log,
        SettingsDesk desk,
        Journal journal,
        SerialConsole console)
    {
        _core = core;
        _boot = boot;
        _hours = hours;
        _log = log;
        _desk = desk;
        _journal = journal;
        _console = console;
    }

    /// <summary>Does one of the writes that are waiting, if this is a good moment for it.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        // The boot record does not wait for the tool to stop. It says whether a person holds the vacuum off, and that must
        // survive a power cut which comes while the tool still runs. The relay is open, so nothing that matters misses the
        // readings.
        if (_boot.IsWriteWaiting && _core.IsRelayResting)
        {
            _boot.IsWriteWaiting = false;
            _boot.Write(BootReason.PowerOn);
            return;
        }

        // Nobody is waiting for the log, nor for run hours that have merely grown, so writing them must not get in anybody's way.
        // They are written just after the vacuum has gone off, or once nobody has worked for ten minutes.
        long off = now - _core.Vacuum.Since;
        bool isGoodTime = off <= JustOffMicroseconds || off >= LogPeriodMicroseconds;
        bool isLogWaiting = isGoodTime && _log.IsDirty && now >= _nextLog
            && !_core.Faults[Fault.RestartLoop].IsActive;
        bool areHoursWaiting = _hours.IsWriteWaiting || (isGoodTime && _hours.IsWorthWriting);
        if ((!_desk.IsSaveWaiting && !areHoursWaiting && !isLogWaiting) || !_core.IsQuiet)
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
        else
        {
            _nextLog = now + LogPeriodMicroseconds;
            _log.Save();
        }
    }

    private void SaveSettings(long now)
    {
        bool isSaved = _desk.RequestSave(now) == SettingsSave.Done;
        _console.Interject(isSaved ? "Saved." : "The flash failed; nothing was saved.");
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
