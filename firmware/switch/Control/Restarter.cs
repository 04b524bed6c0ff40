using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Restarts the board. Before that it saves what the next boot must know, and after the boot it puts that into effect.
/// </summary>
public sealed class Restarter
{
    private const long CleanMicroseconds = Time.Minute;
    private const long ForgivesOneMicroseconds = Time.Hour;

    private readonly IBoard _board;
    private readonly SafeBoard _safe;
    private readonly Heartbeat _heartbeat;
    private readonly DetectionCore _core;
    private readonly BootRecord _boot;
    private readonly EventLog _log;
    private readonly Journal _journal;
    private readonly RunHours _hours;
    private long _forgaveOne;
    private Exception _error;
    private StepPlace _place;
    private long _errorTime;

    /// <summary>Whether the board has been told to restart.</summary>
    public bool IsRestarting;

    /// <summary>Initializes a new instance of the <see cref="Restarter"/> class.</summary>
    /// <param name="board">The board.</param>
    /// <param name="safe">Counts an exception of the relay's line.</param>
    /// <param name="heartbeat">The heartbeat, which is stopped first.</param>
    /// <param name="core">The core, with the present faults.</param>
    /// <param name="boot">The record for the next boot.</param>
    /// <param name="log">The event log.</param>
    /// <param name="journal">Takes the entry of the error that ends this life.</param>
    /// <param name="hours">The run hours.</param>
    public Restarter(
        IBoard board,
        SafeBoard safe,
        Heartbeat heartbeat,
        DetectionCore core,
        BootRecord boot,
        EventLog log,
        Journal journal,
        RunHours hours)
    {
        _board = board;
        _safe = safe;
        _heartbeat = heartbeat;
        _core = core;
        _boot = boot;
        _log = log;
        _journal = journal;
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

        if (_boot.IsLoop)
        {
            _core.Faults.See(Fault.RestartLoop, _boot.LoopCount, now);
        }

        if (_boot.IsHeld)
        {
            // The log has the hold already, from when it began.
            _core.Handle(VacuumEvent.Hold, now);
            _journal.TakeNotices(true, now);
        }
    }

    /// <summary>
    /// Once the board has run for a minute, this is no short life. For each hour without a restart one of those of its own making
    /// is forgiven. When there were too many of either, only a person forgives them.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    public void ForgiveRestarts(long now)
    {
        if (now <= CleanMicroseconds || (_boot.ShortLives | _boot.Restarts) == 0 || _boot.IsLoop)
        {
            return;
        }

        if (_boot.ShortLives != 0)
        {
            _boot.ShortLives = 0;
            _boot.RequestWrite();
        }

        if (_boot.Restarts != 0 && now - _forgaveOne >= ForgivesOneMicroseconds)
        {
            _forgaveOne = now;
            _boot.Restarts--;
            _boot.RequestWrite();
        }
    }

    /// <summary>Restarts the board after an error that nobody expected, and logs the error.</summary>
    /// <param name="error">The error.</param>
    /// <param name="place">What the switch was doing.</param>
    /// <param name="now">Time in microseconds.</param>
    public void RestartAfter(Exception error, StepPlace place, long now)
    {
        _error = error;
        _place = place;
        _errorTime = now;
        Restart(BootReason.Unexpected);
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

        if (_error != null)
        {
            _journal.Note(LogKind.Error, (int)ErrorText.KindOf(_error), (int)_place, _boot.Restarts, _errorTime);
        }

        _log.Save();
        if (_hours.Seconds > 0)
        {
            _hours.Save();
        }
    }
}
