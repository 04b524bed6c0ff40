using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Restarts the board. Before that it saves what the next boot must know, and after the boot it puts that into effect.
/// </summary>
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
    /// <param name="safe">Counts an exception of the relay's line.</param>
    /// <param name="heartbeat">The heartbeat, which is stopped first.</param>
    /// <param name="core">The core, with the present faults.</param>
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

    /// <summary>
    /// Brings back what kept the vacuum off before the restart: faults that wait for a person, a person's hold, and the fault
    /// of too many restarts in a row.
    /// </summary>
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

    /// <summary>
    /// Once the board has run for a minute, the restarts before that must no longer count as restarts in a row.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    public void ForgiveRestarts(long now)
    {
        if (now <= HealthyAfterMicroseconds)
        {
            return;
        }

        if (_boot.IsLoopWritten)
        {
            // The fault stays and keeps the vacuum off, but the board no longer restarts. A write of the boot record makes the
            // next boot count as plugging in, which is a fresh start.
            _boot.IsWriteWaiting = true;
        }
        else if (_boot.Restarts != 0 && !_core.Faults[Fault.RestartLoop].IsActive)
        {
            _boot.Restarts = 0;
            _boot.IsWriteWaiting = true;
        }
    }

    /// <summary>Lets the relay's line rest, saves what the next boot must know, and restarts the board.</summary>
    /// <param name="reason">Why the board restarts.</param>
    public void Restart(BootReason reason)
    {
        IsRestarting = true;
        try
        {
            _heartbeat.Stop();
        }
        catch (Exception)
        {
            // The line cannot be set. The driver drops the relay all the same, because nothing toggles the line any more.
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
            // The board restarts again and again, with the vacuum off all the time. Log and hours have nothing new that would be
            // worth wearing out the flash.
            return;
        }

        _log.Save();
        if (_hours.Seconds > 0)
        {
            _hours.Save();
        }
    }
}
