namespace NanoDustSwitch.Detection;

/// <summary>Works the vacuum by the one table: adds the times and the facts that hold between events.</summary>
public sealed class VacuumControl
{
    private const long Never = long.MaxValue;
    private const int StretchedRunOnMilliseconds = (int)(Time.Minute / Time.Millisecond);

    // How long before the end of the longest run the person is warned.
    private const long WarningMicroseconds = 10 * Time.Minute;

    private readonly VacuumTable _table = new VacuumTable();
    private readonly SurgeWatch _surge = new SurgeWatch();
    private readonly NoticeQueue _notices;
    private CoreSettings _settings;
    private long _deadline = Never;
    private bool _hasWarned;

    /// <summary>Starts made by the switch itself.</summary>
    public readonly StartCounter Starts = new StartCounter();

    /// <summary>The present state.</summary>
    public VacuumState State;

    /// <summary>When the present state began, in microseconds.</summary>
    public long Since;

    /// <summary>Whether the tool runs.</summary>
    public bool IsToolRunning;

    /// <summary>When the tool last started or stopped, in microseconds.</summary>
    public long ToolSince;

    /// <summary>Whether the state wants the vacuum on.</summary>
    public bool WantsVacuum;

    /// <summary>Whether a fault keeps the vacuum off.</summary>
    public bool IsHeldOff;

    /// <summary>Whether the vacuum waits for the end of the tool's start surge.</summary>
    public bool IsWaitingForSurge;

    /// <summary>Until then <see cref="Update"/> has nothing to do unless the facts change; in microseconds.</summary>
    public long NextLook = Never;

    /// <summary>Whether the run-on that is counting was stretched because of too many starts.</summary>
    public bool IsStretched;

    /// <summary>Whether the wait for the tool's stop came from the longest run and not from a hand.</summary>
    public bool RanTooLong;

    /// <summary>Initializes a new instance of the <see cref="VacuumControl"/> class.</summary>
    /// <param name="settings">The settings to begin with.</param>
    /// <param name="notices">Where changes are told.</param>
    public VacuumControl(CoreSettings settings, NoticeQueue notices)
    {
        _settings = settings;
        _notices = notices;
    }

    /// <summary>Takes new settings; a time that is counting is measured anew from its beginning.</summary>
    /// <param name="settings">The settings.</param>
    public void Use(CoreSettings settings)
    {
        _settings = settings;
        BeginTimes();
    }

    /// <summary>Tells how long the present state still lasts.</summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>Microseconds to its end, 0 or more; -1 when it has no end of its own.</returns>
    public long Remaining(long now)
    {
        if (_deadline == Never)
        {
            return -1;
        }

        return _deadline > now ? _deadline - now : 0;
    }

    /// <summary>Takes the facts of a bucket and acts on what has changed.</summary>
    /// <param name="isToolRunning">Whether the tool runs.</param>
    /// <param name="isHeldOff">Whether a fault keeps the vacuum off.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Update(bool isToolRunning, bool isHeldOff, long now)
    {
        if (isHeldOff != IsHeldOff)
        {
            IsHeldOff = isHeldOff;
            Handle(isHeldOff ? VacuumEvent.FaultRose : VacuumEvent.FaultEnded, now);
        }

        if (isToolRunning != IsToolRunning)
        {
            IsToolRunning = isToolRunning;
            ToolSince = now;
            Handle(isToolRunning ? VacuumEvent.ToolStarted : VacuumEvent.ToolStopped, now);
        }

        // The end of a surge is judged by its swing and by nothing else.
        if (now >= _deadline && !IsWaitingForSurge)
        {
            Handle(VacuumEvent.TimeUp, now);
        }
        else if (State == VacuumState.Following && !_hasWarned && _settings.LongestRunMilliseconds > 0
            && _deadline - now <= WarningMicroseconds)
        {
            _hasWarned = true;
            BeginLooks();
            _notices.Add(NoticeKind.LongRunAhead, 0, 0, (int)((_deadline - now) / Time.Second), now);
        }
    }

    /// <summary>While the vacuum waits for the end of the start surge: looks whether it is over, and what is left of it.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <param name="swing">Swing in sixteenths of a count, from a valid window.</param>
    /// <param name="fundamental">Swing of the mains frequency alone.</param>
    /// <param name="noise">Noise floor in the same unit.</param>
    /// <param name="start">Start level in the same unit.</param>
    /// <returns>True when the surge was all there was: a lamp's, a spark; what is left of it is no running tool.</returns>
    public bool IsBriefSurge(Bucket bucket, int swing, int fundamental, int noise, int start)
    {
        long now = bucket.EndTime;
        if (!IsWaitingForSurge || (!_surge.Accept(bucket, swing, fundamental, noise) && now < _deadline))
        {
            return false;
        }

        // A twelfth below the level still counts: where the swing ripples its mean is so much below the greatest, and a tool just at the
        // level must not wait.
        if (_surge.Level < start - (start / 12))
        {
            return true;
        }

        Handle(VacuumEvent.TimeUp, now);
        return false;
    }

    /// <summary>Tells what a short press of the button asks for: the other of on and off.</summary>
    /// <returns>The event to handle.</returns>
    public VacuumEvent ShortPress()
    {
        return WantsVacuum || State == VacuumState.Starting ? VacuumEvent.HandOff : VacuumEvent.HandOn;
    }

    /// <summary>Handles an event by the table, then whatever the facts ask for in the new state.</summary>
    /// <param name="happened">What happened.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Handle(VacuumEvent happened, long now)
    {
        Move(happened, now);

        // A state may be entered while a fact already speaks against it, for example idle while the tool runs.
        // Each pass below leaves such a state for good; the limit is only there in case the table is ever changed wrongly.
        for (int i = 0; i < VacuumTable.States; i++)
        {
            if (IsHeldOff && (State == VacuumState.Idle || State == VacuumState.Starting || WantsVacuum))
            {
                Move(VacuumEvent.FaultRose, now);
            }
            else if (IsToolRunning && (State == VacuumState.Idle || State == VacuumState.RunningOn))
            {
                Move(VacuumEvent.ToolStarted, now);
            }
            else if (!IsToolRunning && (State == VacuumState.Starting || State == VacuumState.Following || State == VacuumState.AwaitingStop))
            {
                Move(VacuumEvent.ToolStopped, now);
            }
            else
            {
                return;
            }
        }
    }

    private void Move(VacuumEvent happened, long now)
    {
        VacuumState from = State;
        VacuumState to = _table.Next(from, happened);
        if (to == from)
        {
            // Said again by hand, the by-hand limit counts anew.
            if (to == VacuumState.ByHand && happened == VacuumEvent.HandOn)
            {
                Since = now;
                BeginTimes();
            }

            return;
        }

        State = to;
        Since = now;
        RanTooLong = from == VacuumState.Following && happened == VacuumEvent.TimeUp;
        if (to == VacuumState.Starting)
        {
            _surge.Restart();
        }
        else if (to == VacuumState.Following)
        {
            _hasWarned = false;
            if (from == VacuumState.Starting)
            {
                Starts.Add(now);
            }
        }
        else if (to == VacuumState.RunningOn)
        {
            IsStretched = Starts.InLastMinute(now) >= _settings.StartsAMinute
                && _settings.RunOnMilliseconds < StretchedRunOnMilliseconds;
        }

        BeginTimes();
        _notices.Add(NoticeKind.StateChanged, (int)from, (int)to, (int)happened, now);
    }

    private void BeginTimes()
    {
        int milliseconds = -1;
        switch (State)
        {
            case VacuumState.Starting:
                milliseconds = _settings.StartDelayMilliseconds == CoreSettings.AfterSurge
                    ? CoreSettings.LongestSurgeMilliseconds
                    : _settings.StartDelayMilliseconds;
                break;
            case VacuumState.Following:
                milliseconds = _settings.LongestRunMilliseconds > 0 ? _settings.LongestRunMilliseconds : -1;
                break;
            case VacuumState.RunningOn:
                milliseconds = IsStretched ? StretchedRunOnMilliseconds : _settings.RunOnMilliseconds;
                break;
            case VacuumState.ByHand:
                milliseconds = _settings.ByHandMilliseconds;
                break;
        }

        _deadline = milliseconds < 0 ? Never : Since + (milliseconds * Time.Millisecond);
        BeginLooks();
    }

    private void BeginLooks()
    {
        WantsVacuum = State == VacuumState.Following || State == VacuumState.RunningOn || State == VacuumState.ByHand;
        IsWaitingForSurge = State == VacuumState.Starting && _settings.StartDelayMilliseconds == CoreSettings.AfterSurge;
        NextLook = IsWaitingForSurge ? Never
            : State == VacuumState.Following && !_hasWarned && _deadline != Never ? _deadline - WarningMicroseconds
            : _deadline;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        State = (VacuumState)tape.Number((int)State);
        Since = tape.Number(Since);
        _deadline = tape.Number(_deadline);
        ToolSince = tape.Number(ToolSince);
        IsToolRunning = tape.Flag(IsToolRunning);
        IsStretched = tape.Flag(IsStretched);
        RanTooLong = tape.Flag(RanTooLong);
        IsHeldOff = tape.Flag(IsHeldOff);
        _hasWarned = tape.Flag(_hasWarned);
        _surge.Exchange(tape);
        Starts.Exchange(tape);
        BeginLooks();
    }
}
