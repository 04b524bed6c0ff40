using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Does what a person asks for by button or console, and sees to it that this is recorded, logged and, where it must be, kept
/// over a power cut.
/// </summary>
public sealed class Controls
{
    private readonly DetectionCore _core;
    private readonly Recorder _recorder;
    private readonly BootRecord _boot;
    private readonly Journal _journal;
    private readonly BoardParts _failedParts;

    /// <summary>Whether a person has asked for a restart of the board.</summary>
    public bool IsRestartAsked;

    /// <summary>
    /// Whether the vacuum is on by hand because a person switched it on while a tool ran. Then it does not stop with that tool.
    /// </summary>
    public bool IsOnInCut;

    /// <summary>Initializes a new instance of the <see cref="Controls"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="recorder">Notes in a recording what was done.</param>
    /// <param name="boot">Keeps over a power cut that the vacuum is held off.</param>
    /// <param name="journal">Logs that the faults were cleared.</param>
    /// <param name="failedParts">The parts of the board that failed to open.</param>
    public Controls(DetectionCore core, Recorder recorder, BootRecord boot, Journal journal, BoardParts failedParts)
    {
        _core = core;
        _recorder = recorder;
        _boot = boot;
        _journal = journal;
        _failedParts = failedParts;
    }

    /// <summary>Does with the vacuum what a person asks for: on, off, hold or auto.</summary>
    /// <param name="happened">What the person asks for.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Handle(VacuumEvent happened, long now)
    {
        _core.Handle(happened, now);
        if (happened == VacuumEvent.HandOn)
        {
            IsOnInCut = _core.Vacuum.State == VacuumState.ByHand && _core.IsToolRunning;
        }

        _recorder.Accept(RecordedEvent.Vacuum, (int)happened, now);
        bool isHeld = _core.Vacuum.State == VacuumState.Held;
        bool isInDoubt = _boot.IsHoldInDoubt && isHeld && happened != VacuumEvent.Hold;
        if (isHeld != _boot.IsHeld || isInDoubt != _boot.IsHoldInDoubt)
        {
            // A hold must survive a power cut, because somebody may have a hand in the bin when the power comes back.
            _boot.IsHeld = isHeld;
            _boot.IsHoldInDoubt = isInDoubt;
            _boot.RequestWrite();
        }
    }

    /// <summary>Clears all faults that keep the vacuum off. One whose cause is still there comes back by itself.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void ClearFaults(long now)
    {
        _core.Faults.Clear(now);
        _recorder.Accept(RecordedEvent.Cleared, 0, now);
        _boot.Forgive();
        _journal.Note(LogKind.Cleared, 0, 0, 0, now);
        JudgeRelayLine(now);
    }

    /// <summary>
    /// Raises the fault for a relay line that could not be opened. Clearing cannot end it, so it is raised again after each
    /// clearing.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    public void JudgeRelayLine(long now)
    {
        if ((_failedParts & BoardParts.RelayLine) != BoardParts.None)
        {
            _core.Faults.See(Fault.RelayLine, 0, now);
        }
    }
}
