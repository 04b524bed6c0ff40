using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Writes to flash when that does no harm. A write stalls the readings, so it waits until tool and vacuum are off, and a step
/// does one write.
/// </summary>
public sealed class FlashKeeper
{
    // The event log is written at most once in ten minutes, to spare the flash.
    private const long LogPeriod = 600L * 1000000;

    // How long after the vacuum has gone off a write may still begin. It is over before the relay may close again, so that no
    // tool's start has to wait for it.
    private const long JustOff = 100000;

    private readonly Switch _switch;
    private bool _isBootWaiting;
    private bool _areHoursWaiting;
    private bool _isFilterNoted;
    private long _nextLog;

    /// <summary>Initializes a new instance of the <see cref="FlashKeeper"/> class.</summary>
    /// <param name="of">The switch.</param>
    public FlashKeeper(Switch of)
    {
        _switch = of;
    }

    /// <summary>Asks for the boot record to be written.</summary>
    public void KeepBootRecord()
    {
        _isBootWaiting = true;
    }

    /// <summary>Asks for the run hours to be written.</summary>
    public void KeepHours()
    {
        _areHoursWaiting = true;
        _isFilterNoted = false;
    }

    /// <summary>Writes what waits, if it may.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        // That the vacuum is held off must outlive a power cut also when a tool runs now. With the relay open, a write stalls
        // nothing that matters.
        if (_isBootWaiting && _switch.IsRelayResting)
        {
            _isBootWaiting = false;
            _switch.Boot.Write(BootReason.PowerOn);
            return;
        }

        // Run hours and log, which nobody has asked to be saved, are written just after the vacuum has gone off, or once nobody
        // has worked for as long as a log entry may wait.
        long off = now - _switch.Core.Vacuum.Since;
        bool isGoodTime = off <= JustOff || off >= LogPeriod;
        bool isLogWaiting = isGoodTime && _switch.Log.IsDirty && now >= _nextLog
            && !_switch.Core.Faults[Fault.RestartLoop].IsActive;
        bool areHoursWaiting = _areHoursWaiting || (isGoodTime && _switch.Hours.IsWorthWriting);
        if ((!_switch.Desk.IsSaveWaiting && !areHoursWaiting && !isLogWaiting) || !_switch.IsQuiet)
        {
            return;
        }

        if (_switch.Desk.IsSaveWaiting)
        {
            SaveSettings();
        }
        else if (areHoursWaiting)
        {
            _areHoursWaiting = false;
            _switch.Hours.Save();
            if (_switch.IsFilterDue && !_isFilterNoted)
            {
                _isFilterNoted = true;
                _switch.Note(LogKind.FilterDue, 0, 0, _switch.Hours.FilterSeconds / 60);
            }
        }
        else
        {
            _nextLog = now + LogPeriod;
            _switch.Log.Save();
        }
    }

    private void SaveSettings()
    {
        bool isSaved = _switch.Desk.RequestSave() == SettingsSave.Done;
        _switch.Console.Interject(isSaved ? "Saved." : "The flash failed; nothing was saved.");
    }
}
