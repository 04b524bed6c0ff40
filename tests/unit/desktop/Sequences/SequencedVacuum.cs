using System.Collections.Generic;
using System.Linq;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests.Sequences;

/// <summary>
/// The vacuum's control and the relay's gate behind it, as the core puts them together, with a memory of what was asked of them.
/// It can be forked, so that a sequence need not be played from its beginning.
/// </summary>
internal sealed class SequencedVacuum
{
    private const long Moment = Time.Second / 10;
    private const long Pause = 70 * Time.Second;

    // Far from nought, beyond what 32 bits of milliseconds hold: no time may be special.
    private const long Beginning = 1L << 50;

    private readonly CoreSettings _settings;
    private readonly NoticeQueue _notices = new NoticeQueue();
    private readonly List<(VacuumState From, VacuumState To)> _told = new List<(VacuumState From, VacuumState To)>();
    private readonly List<long> _starts = new List<long>();

    public SequencedVacuum(CoreSettings settings)
    {
        _settings = settings;
        Control = new VacuumControl(settings, _notices);
        Now = Beginning;
        OpenedAt = Now;
        Gate.SetRest(settings.RestartGapMilliseconds * Time.Millisecond);
        Gate.NoteOpening(Now);
    }

    public VacuumControl Control { get; }

    public RelayGate Gate { get; } = new RelayGate();

    public CoreSettings Settings => _settings;

    public long Now { get; private set; }

    public bool IsToolRunning { get; private set; }

    public bool IsFaulty { get; private set; }

    /// <summary>A person has held it off and not released it.</summary>
    public bool IsHeld { get; private set; }

    /// <summary>A person has switched it off while the tool ran, and the tool has run ever since.</summary>
    public bool IsSwitchedOff { get; private set; }

    public long OpenedAt { get; private set; }

    /// <summary>From the command to open until the relay may close again, in µs.</summary>
    public long LongestRest => RelayGate.LongestHoldMicroseconds + (_settings.RestartGapMilliseconds * Time.Millisecond);

    /// <summary>The changes of state that were told of the last event.</summary>
    public IReadOnlyList<(VacuumState From, VacuumState To)> Told => _told;

    /// <summary>Automatic starts of the last minute, by what was told.</summary>
    public int StartsInLastMinute => _starts.Count(time => Now - time < Time.Minute);

    /// <summary>All that decides what can follow. Two with the same key are the same switch.</summary>
    public string Key
    {
        get
        {
            long looksIn = Control.NextLook == long.MaxValue ? -1 : Control.NextLook - Now;
            long rests = System.Math.Min(Now - OpenedAt, LongestRest);
            string starts = string.Join(",", _starts.Where(time => Now - time < Time.Minute).Select(time => Now - time));
            return $"{Control.State} {Control.Remaining(Now)} {looksIn} {Control.IsToolRunning} {Control.IsHeldOff} "
                + $"{Control.IsStretched} "
                + $"{Control.RanTooLong} {Gate.IsClosed} {rests} {IsHeld} {IsSwitchedOff} {starts}";
        }
    }

    public SequencedVacuum Fork()
    {
        SequencedVacuum fork = new SequencedVacuum(_settings)
        {
            Now = Now,
            IsToolRunning = IsToolRunning,
            IsFaulty = IsFaulty,
            IsHeld = IsHeld,
            IsSwitchedOff = IsSwitchedOff,
            OpenedAt = OpenedAt,
        };
        fork._starts.AddRange(_starts);
        StateTape tape = new StateTape();
        tape.Write();
        Control.Exchange(tape);
        Gate.Exchange(tape);
        tape.Read();
        fork.Control.Exchange(tape);
        fork.Gate.Exchange(tape);
        return fork;
    }

    public void Do(SequenceEvent happened)
    {
        bool wasClosed = Gate.IsClosed;
        switch (happened)
        {
            case SequenceEvent.ToolStartsOrStops:
                IsToolRunning = !IsToolRunning;
                IsSwitchedOff = false;
                break;
            case SequenceEvent.FaultRisesOrEnds:
                IsFaulty = !IsFaulty;
                break;
            case SequenceEvent.TimeUp:
                RunOutOfTime();
                break;
            case SequenceEvent.AMoment:
                Now += Moment;
                break;
            case SequenceEvent.APause:
                Now += Pause;
                break;
            case SequenceEvent.HandOn:
                Handle(VacuumEvent.HandOn);
                IsSwitchedOff = false;
                break;
            case SequenceEvent.HandOff:
                Handle(VacuumEvent.HandOff);
                IsSwitchedOff = IsToolRunning;
                break;
            case SequenceEvent.Auto:
                Handle(VacuumEvent.Auto);
                IsHeld = false;
                IsSwitchedOff = false;
                break;
            case SequenceEvent.Hold:
                Handle(VacuumEvent.Hold);
                IsHeld = true;
                break;
            case SequenceEvent.RelayLost:
                Gate.NoteOpening(Now);
                OpenedAt = Now;
                break;
            default:
                Control.Use(_settings);
                break;
        }

        // The core asks at every bucket; here nothing changes between two events.
        Control.Update(IsToolRunning, IsFaulty, Now);
        Gate.Update(Control.WantsVacuum, IsFaulty, Now);
        if (wasClosed && !Gate.IsClosed)
        {
            OpenedAt = Now;
        }

        Listen();
    }

    private void RunOutOfTime()
    {
        if (Control.IsWaitingForSurge)
        {
            // Whoever watches the surge says that it is over.
            Control.Handle(VacuumEvent.TimeUp, Now);
        }
        else if (Control.NextLook != long.MaxValue)
        {
            Now = System.Math.Max(Now, Control.NextLook);
        }
    }

    private void Handle(VacuumEvent happened)
    {
        Control.Handle(happened, Now);
        Gate.Update(Control.WantsVacuum, IsFaulty, Now);
    }

    private void Listen()
    {
        _told.Clear();
        for (Notice notice = _notices.Take(); notice != null; notice = _notices.Take())
        {
            if (notice.Kind == NoticeKind.StateChanged)
            {
                _told.Add(((VacuumState)notice.First, (VacuumState)notice.Second));
                if (notice.First == (int)VacuumState.Starting && notice.Second == (int)VacuumState.On)
                {
                    _starts.Add(notice.Time);
                }
            }
        }
    }
}
