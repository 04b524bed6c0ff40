using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Restarts the board, keeps what the next boot must know, and brings that back when the board has come up.</summary>
public sealed class Restarter
{
    private const long HealthyAfterMicroseconds = Time.Minute;

    private readonly IBoard _board;
    private readonly SafeBoard _safe;
    private readonly Heartbeat _heartbeat;
    private readonly DetectionCore _core;
    private readonly BootRecord _boot;
    private readonly EventLog _log;
    private readonly RunHours _hours;

    /// <summary>Whether the board has been told to restart.</summary>
    public bool IsRestarting;

    /// <summary>Initializes a new instance of the <see cref="Restarter"/> class.</summary>
    /// <param name="board">The board.</param>
    /// <param name="safe">Where a trouble of the relay's line is counted.</param>
    /// <param name="heartbeat">What has to rest first.</param>
    /// <param name="core">The core, with the faults that stand.</param>
    /// <param name="boot">The record for the next boot.</param>
    /// <param name="log">The event log.</param>
    /// <param name="hours">The run hours.</param>
    public Restarter(
        IBoard board, SafeBoard safe, Heartbeat heartbeat, DetectionCore core, BootRecord boot, EventLog log, RunHours hours)
    {
        _board = board;
        _safe = safe;
        _heartbeat = heartbeat;
        _core = core;
        _boot = boot;
        _log = log;
        _hours = hours;
    }

    /// <summary>Brings back what stood before the restart: lockouts, too many restarts in a row, a person's hold.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Recall(long now)
    {
        for (int i = FaultBits.Next(_boot.Lockouts, -1); i >= 0; i = FaultBits.Next(_boot.Lockouts, i))
        {
            _core.Faults.Recall((Fault)i, now);
        }

        if (_boot.Restarts >= BootRecord.MostRestarts)
        {
            _core.Faults.See(Fault.RestartLoop, _boot.Restarts, now);
        }

        if (_boot.IsHeld)
        {
            _core.Handle(VacuumEvent.Hold, now);
        }
    }

    /// <summary>After a minute without trouble earlier restarts count no more.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void ForgiveRestarts(long now)
    {
        if (now <= HealthyAfterMicroseconds)
        {
            return;
        }

        if (_boot.IsLoopWritten)
        {
            // It stays held off, but the loop is over: plugging in is a fresh start again.
            _boot.IsWriteWaiting = true;
        }
        else if (_boot.Restarts != 0 && !_core.Faults[Fault.RestartLoop].IsActive)
        {
            _boot.Restarts = 0;
            _boot.IsWriteWaiting = true;
        }
    }

    /// <summary>Lets the relay's line rest, keeps what the next boot must know, and restarts the board.</summary>
    /// <param name="reason">Why.</param>
    public void Restart(BootReason reason)
    {
        IsRestarting = true;
        try
        {
            _heartbeat.Stop();
        }
        catch (Exception)
        {
            // The driver lets go by itself: nothing toggles any more.
            _safe.PanelTroubles++;
        }

        if (reason == BootReason.Asked || !_boot.IsLoopWritten)
        {
            KeepForTheNextBoot(reason);
        }

        _board.Restart();
    }

    private void KeepForTheNextBoot(BootReason reason)
    {
        if (reason != BootReason.Asked)
        {
            _boot.Restarts++;
        }

        _boot.Lockouts = _core.Faults.ToRecall();
        _boot.Write(reason);
        if (reason != BootReason.Asked && _core.Faults[Fault.RestartLoop].IsActive)
        {
            // It goes on and on, with the vacuum off all the while: nothing new that would be worth the flash.
            return;
        }

        _log.Save();
        if (_hours.Seconds > 0)
        {
            _hours.Save();
        }
    }
}
