using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>What a person can do with the switch, by button or console, and what has to follow from it.</summary>
public sealed class Controls
{
    private readonly DetectionCore _core;
    private readonly Recorder _recorder;
    private readonly BootRecord _boot;
    private readonly Journal _journal;
    private readonly BoardParts _failedParts;

    /// <summary>Whether a person has asked for a restart of the board.</summary>
    public bool IsRestartAsked;

    /// <summary>Initializes a new instance of the <see cref="Controls"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="recorder">Where a recording notes what was done.</param>
    /// <param name="boot">What outlives a power cut.</param>
    /// <param name="journal">Where it is logged.</param>
    /// <param name="failedParts">The parts of the board that failed to open.</param>
    public Controls(DetectionCore core, Recorder recorder, BootRecord boot, Journal journal, BoardParts failedParts)
    {
        _core = core;
        _recorder = recorder;
        _boot = boot;
        _journal = journal;
        _failedParts = failedParts;
    }

    /// <summary>Does with the vacuum what a person asks for.</summary>
    /// <param name="happened">The event.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Handle(VacuumEvent happened, long now)
    {
        _core.Handle(happened, now);
        _recorder.Accept(RecordedEvent.Vacuum, (int)happened, now);
        bool isHeld = _core.Vacuum.State == VacuumState.Held;
        if (isHeld != _boot.IsHeld)
        {
            // A hold outlives a power cut: somebody may have a hand in the bin.
            _boot.IsHeld = isHeld;
            _boot.IsWriteWaiting = true;
        }
    }

    /// <summary>Clears the faults.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void ClearFaults(long now)
    {
        _core.Faults.Clear(now);
        _recorder.Accept(RecordedEvent.Cleared, 0, now);
        _boot.Forgive();
        _journal.Note(LogKind.Cleared, 0, 0, 0, now);
        JudgeRelayLine(now);
    }

    /// <summary>A relay line that could not be opened stays a fault, also when a person has cleared it.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void JudgeRelayLine(long now)
    {
        if ((_failedParts & BoardParts.RelayLine) != BoardParts.None)
        {
            _core.Faults.See(Fault.RelayLine, 0, now);
        }
    }
}
