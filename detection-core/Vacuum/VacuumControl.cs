namespace NanoDustSwitch.Detection;

/// <summary>
/// Decides whether the vacuum should be on. What follows from an event stands in <see cref="VacuumTable"/>; this part adds the
/// times after which a state ends, and the facts that a new state must agree with.
/// </summary>
public sealed class VacuumControl
{
    private const long Never = long.MaxValue;
    private const int StretchedRunOnMilliseconds = (int)(Time.Minute / Time.Millisecond);

    // How long before the end of the longest run the person is warned.
    private const long WarningMicroseconds = 10 * Time.Minute;

    // A shower of wild readings may last for 0.1 s, and the window shows it for a cycle longer. Single ones seldom follow each
    // other for so long.
    private const long ShowerMicroseconds = 170 * Time.Millisecond;

    // With few readings a second a stretch may show a tenth less than its load has, or more, and two that follow each other too.
    // Looks that show too little and looks that show a tool are weighed against each other: one more of a tool starts the vacuum,
    // so many more of the others give the start up. Waiting longer costs nothing while the vacuum is off.
    private const int LooksToGiveUp = 4;

    private readonly VacuumTable _table = new VacuumTable();
    private readonly NoticeQueue _notices;
    private CoreSettings _settings;

    // A burst is told when no tool has come for so long after it: electronics may draw one before their motor starts.
    private const long BurstMicroseconds = Time.Second;

    // So long a load may keep the vacuum waiting that resembles one which needs none.
    private const long KnowMicroseconds = 500 * Time.Millisecond;

    private long _knownBy;
    private long _deadline = Never;
    private long _surgeEnd;
    private bool _isSurgeOver;
    private int _lessLooks;
    private bool _hasWarned;
    private long _burstAt = Never;
    private int _burstMilliseconds;
    private long _burstToldAt = -Time.Minute;

    /// <summary>What the starts have taught of the tools.</summary>
    public readonly ToolBook Book = new ToolBook();

    /// <summary>Which tool it is.</summary>
    public readonly ToolGuess Guess;

    /// <summary>The load that needs no vacuum, while it runs.</summary>
    public readonly IgnoredLoad Ignored = new IgnoredLoad();

    /// <summary>A second tool beside it.</summary>
    public readonly SecondTool Second;

    /// <summary>Watches a tool's start.</summary>
    public readonly SurgeWatch Surge;

    /// <summary>The automatic starts: those that the switch made and not a hand.</summary>
    public readonly StartCounter Starts = new StartCounter(CoreSettings.MostStartsAMinute, Time.Minute);

    /// <summary>The present state.</summary>
    public VacuumState State;

    /// <summary>When the present state began, in microseconds.</summary>
    public long Since;

    /// <summary>
    /// What <see cref="Update"/> was last told of the tool, so that a start or stop since then is noticed. Whether the tool runs
    /// now is known by the tool finder.
    /// </summary>
    public bool IsToolRunning;

    /// <summary>Whether the state wants the vacuum on.</summary>
    public bool WantsVacuum;

    /// <summary>Whether a fault keeps the vacuum off.</summary>
    public bool IsHeldOff;

    /// <summary>Whether the vacuum waits for the end of the tool's start surge.</summary>
    public bool IsWaitingForSurge;

    /// <summary>
    /// When <see cref="Update"/> is to be called at the latest, in microseconds; before that only if a fact has changed.
    /// </summary>
    public long NextLook = Never;

    /// <summary>Whether the present run-on was made longer because of too many starts in the last minute.</summary>
    public bool IsStretched;

    /// <summary>
    /// Whether the vacuum waits for the tool's stop because the tool ran too long, and not because a hand switched it off.
    /// </summary>
    public bool RanTooLong;

    /// <summary>Gets the run-on after the present tool, in ms: its own, or that of the setting.</summary>
    public int RunOn
    {
        get { return RunOnAfter(_settings.RunOnMilliseconds); }
    }

    /// <summary>Initializes a new instance of the <see cref="VacuumControl"/> class.</summary>
    /// <param name="settings">The settings to begin with.</param>
    /// <param name="notices">Where changes are told.</param>
    public VacuumControl(CoreSettings settings, NoticeQueue notices)
    {
        _settings = settings;
        _notices = notices;
        Surge = new SurgeWatch(Book);
        Guess = new ToolGuess(Book);
        Second = new SecondTool(Book, Surge.Seen, Guess, notices);
    }

    /// <summary>Takes new settings; the present state then lasts as long as they say, counted from its beginning.</summary>
    /// <param name="settings">The settings.</param>
    public void Use(CoreSettings settings)
    {
        _settings = settings;
        SetDeadline();
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

    /// <summary>Takes the facts after a bucket, and acts on those that have changed and on a time that is up.</summary>
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
            bool isAgain = isToolRunning && State == VacuumState.RunOn;
            if (isToolRunning && !isAgain)
            {
                // Also where its start is not watched, as with the vacuum on by hand.
                Guess.Begin(now);
            }

            Handle(isToolRunning ? VacuumEvent.ToolStarted : VacuumEvent.ToolStopped, now);
            if (isAgain && State == VacuumState.On)
            {
                Guess.BeginAgain(now);
                Second.Other = ToolGuess.None;
                WatchStart(now);
            }
        }

        // The wait for the end of a surge is ended by IsBriefSurge, which also looks at what is left of the surge when the time
        // is up. None is watched when the settings were changed during a start that had waited for long.
        if (now >= _deadline && !(IsWaitingForSurge && Surge.IsWatching)
            && !(State == VacuumState.Starting && WaitsToKnow(now)))
        {
            Handle(VacuumEvent.TimeUp, now);
        }
        else if (now >= _burstAt)
        {
            TellBurst(now);
        }
        else if (State == VacuumState.On && !_hasWarned && _settings.LongestRunMilliseconds > 0
            && _deadline - now <= WarningMicroseconds)
        {
            _hasWarned = true;
            DeriveFromState();
            _notices.Add(NoticeKind.LongRunAhead, 0, 0, (int)((_deadline - now) / Time.Second), now);
        }
    }

    /// <summary>
    /// Looks whether the start surge is over, while the vacuum waits for that. If it is and a tool is left, the vacuum goes on.
    /// Until it has settled, or the longest surge would be over, the tool is still looked at, to know it the next time.
    /// </summary>
    /// <param name="bucket">The bucket, one at which the surge is to be looked at.</param>
    /// <param name="window">The window, a valid one.</param>
    /// <param name="noise">Noise floor, a swing in sixteenths of a count.</param>
    /// <param name="levels">The levels.</param>
    /// <returns>True when the surge is over and no tool is left: it was a lamp's, or a spark.</returns>
    public bool IsBriefSurge(Bucket bucket, SwingWindow window, int noise, ToolLevels levels)
    {
        long now = bucket.EndTime;
        bool isTimeUp = now >= _surgeEnd;
        if (!_isSurgeOver && !isTimeUp)
        {
            if (Surge.Accept(bucket, window, noise))
            {
                if (IsWaitingForSurge)
                {
                    _isSurgeOver = Surge.IsOver();
                }
                else if (Surge.IsSettled)
                {
                    Surge.End(true);
                    return false;
                }
            }
            else if (!IsWaitingForSurge)
            {
                Surge.LookAgain(window);
            }

            if (_isSurgeOver)
            {
                // Acted upon with the next bucket: both in one would be dear for the board.
                Surge.NextLook = now;
            }
            else if (Surge.NextLook > _surgeEnd)
            {
                Surge.NextLook = _surgeEnd;
            }

            return false;
        }

        _isSurgeOver = false;
        Surge.NextLook = now + ((SwingWindow.Length - 2) * Bucket.Microseconds);
        if (!IsWaitingForSurge)
        {
            if (isTimeUp)
            {
                Surge.EndLast(window);
            }

            return false;
        }

        if (!isTimeUp && now - Since < ShowerMicroseconds)
        {
            return false;
        }

        // Narrow pulses may show little for a stretch, and a wild reading much. What two stretches do not agree upon is looked at
        // again with the next one.
        bool isLess = IsLess(window, levels, 0);
        bool wasLess = IsLess(window, levels, SwingWindow.Length);
        if (isLess && wasLess)
        {
            _lessLooks++;
            return isTimeUp || _lessLooks >= LooksToGiveUp;
        }

        _lessLooks -= isLess == wasLess || _lessLooks > 0 ? 1 : 0;
        if ((_lessLooks < 0 || isTimeUp) && !WaitsToKnow(now))
        {
            Handle(VacuumEvent.TimeUp, now);
        }

        return false;
    }

    /// <summary>Tells the run-on after the present tool: the longer one where two tools ran together.</summary>
    /// <param name="asSet">That of the setting, in ms.</param>
    /// <returns>The run-on in ms.</returns>
    public int RunOnAfter(int asSet)
    {
        int own = Guess.RunOn(Guess.Tool, asSet);
        int other = Second.Other == ToolGuess.None ? 0 : Guess.RunOn(Second.Other, asSet);
        return own > other ? own : other;
    }

    /// <summary>Begins to watch the start of a second tool.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void BeginSecond(long now)
    {
        WatchStart(now);
        Surge.IsBeside = true;
    }

    /// <summary>Begins to take no notice of a load, which is then looked at with every bucket.</summary>
    /// <param name="window">A valid window.</param>
    public void Ignore(SwingWindow window)
    {
        Ignored.Begin(Book, Guess.Tool, window);
        DeriveFromState();
    }

    /// <summary>Takes a bucket while a load is there that needs no vacuum.</summary>
    /// <param name="window">The window.</param>
    /// <param name="isRunning">Whether anything runs on the line.</param>
    /// <param name="least">Swing of the smallest tool, in sixteenths of a count.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>Whether a tool runs that the vacuum follows.</returns>
    public bool FollowIgnored(SwingWindow window, bool isRunning, int least, long now)
    {
        bool wasAlone = Ignored.IsAlone;
        bool follows = isRunning;
        if (Book[Ignored.Place, ToolFigure.Wish] != ToolBook.NoVacuum)
        {
            // A person has changed his mind meanwhile.
            Ignored.End();
        }
        else
        {
            follows = Ignored.Follow(window, isRunning, least);
        }

        if (!Ignored.IsThere)
        {
            DeriveFromState();
            if (wasAlone && !isRunning)
            {
                Guess.Stop(now);
            }
        }

        return follows;
    }

    // What begins like a load that needs no vacuum is waited for a little longer, until it is sure which one it is.
    private bool WaitsToKnow(long now)
    {
        if (_knownBy == 0)
        {
            _knownBy = now + KnowMicroseconds;
        }

        if (now >= _knownBy || !Book.HasNoVacuum || Surge.Seen.Height == 0 || !Guess.MayNeedNone(Surge.Seen))
        {
            return false;
        }

        // What it is may be surer with every look.
        Surge.IsNews = true;
        Surge.HasMore = true;
        return true;
    }

    // The swing of half waves and of chopped current ripples by a sixth and more: there the greatest tells; eight looks miss
    // the very greatest by up to a thirty-second.
    private static bool IsLess(SwingWindow window, ToolLevels levels, int back)
    {
        int mean = window.MeanOf(window.Powers, back);
        if (mean >= levels.LeftPower)
        {
            return false;
        }

        int top = window.GreatestPower(back);
        bool ripples = mean < top / 7 * 5;
        return !ripples || top < SwingWindow.PowerOf(levels.StartOfTwo - (levels.StartOfTwo >> 5));
    }

    /// <summary>Tells what a short press of the button asks for: off if the vacuum is on or about to start, else on.</summary>
    /// <returns>The event to handle.</returns>
    public VacuumEvent ShortPress()
    {
        return WantsVacuum || State == VacuumState.Starting ? VacuumEvent.HandOff : VacuumEvent.HandOn;
    }

    /// <summary>Handles an event by the table, then lets the facts act on the new state.</summary>
    /// <param name="happened">What happened.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Handle(VacuumEvent happened, long now)
    {
        Move(happened, now);

        // The new state may not agree with a fact, for example idle while the tool runs. Each pass below leaves such a state
        // for good, so a few passes are always enough; the limit only guards against a mistake in the table, which would loop
        // here forever.
        for (int i = 0; i < VacuumTable.States; i++)
        {
            if (IsHeldOff && (State == VacuumState.Idle || State == VacuumState.Starting || WantsVacuum))
            {
                Move(VacuumEvent.FaultRose, now);
            }
            else if (IsToolRunning && (State == VacuumState.Idle || State == VacuumState.RunOn))
            {
                Move(VacuumEvent.ToolStarted, now);
            }
            else if (!IsToolRunning
                && (State == VacuumState.Starting || State == VacuumState.On || State == VacuumState.UntilStop))
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
            // Switched on by hand once more, the vacuum stays on for the whole by-hand limit from now.
            if (to == VacuumState.ByHand && happened == VacuumEvent.HandOn)
            {
                Since = now;
                SetDeadline();
            }

            return;
        }

        NoteBurst(from, to, happened, now);
        State = to;
        Since = now;
        RanTooLong = from == VacuumState.On && happened == VacuumEvent.TimeUp;
        if (from == VacuumState.Starting && to != VacuumState.On)
        {
            Surge.End(Ignored.IsAlone);
        }
        else if (from == VacuumState.On)
        {
            // What is watched beside another tool teaches nothing.
            Surge.End(!Second.IsFollowing);
            Second.End(now);
        }

        if (to == VacuumState.Starting)
        {
            Guess.Begin(now);
            Second.Other = ToolGuess.None;
            WatchStart(now);
            _knownBy = 0;
            _lessLooks = 0;
        }
        else if (to == VacuumState.ByHand && !IsToolRunning)
        {
            Guess.Tool = ToolGuess.None;
        }
        else if (to == VacuumState.On)
        {
            _hasWarned = false;
            if (from == VacuumState.Starting)
            {
                Starts.Add(now);
            }
        }
        else if (to == VacuumState.RunOn)
        {
            IsStretched = Starts.Recent(now) >= _settings.StartsAMinute && RunOn < StretchedRunOnMilliseconds;
        }

        SetDeadline();
        _notices.Add(NoticeKind.StateChanged, (int)from, (int)to, (int)happened, now);
    }

    private void WatchStart(long now)
    {
        Surge.Begin(now);
        _isSurgeOver = false;
        _surgeEnd = now + (CoreSettings.LongestSurgeMilliseconds * Time.Millisecond);
    }

    private void NoteBurst(VacuumState from, VacuumState to, VacuumEvent happened, long now)
    {
        _burstAt = Never;
        if (from == VacuumState.Starting && to == VacuumState.Idle && happened == VacuumEvent.ToolStopped && !Ignored.IsAlone
            && now - _burstToldAt >= Time.Minute)
        {
            _burstAt = now + BurstMicroseconds;
            _burstMilliseconds = (int)((now - Since) / Time.Millisecond);
        }
    }

    private void TellBurst(long now)
    {
        _burstAt = Never;
        _burstToldAt = now;
        DeriveFromState();
        _notices.Add(NoticeKind.Burst, 0, 0, _burstMilliseconds, now);
    }

    private void SetDeadline()
    {
        int milliseconds = -1;
        switch (State)
        {
            case VacuumState.Starting:
                milliseconds = _settings.StartDelayMilliseconds == CoreSettings.AfterSurge
                    ? CoreSettings.LongestSurgeMilliseconds
                    : _settings.StartDelayMilliseconds;
                break;
            case VacuumState.On:
                milliseconds = _settings.LongestRunMilliseconds > 0 ? _settings.LongestRunMilliseconds : -1;
                break;
            case VacuumState.RunOn:
                milliseconds = IsStretched ? StretchedRunOnMilliseconds : RunOn;
                break;
            case VacuumState.ByHand:
                milliseconds = _settings.ByHandMilliseconds;
                break;
        }

        _deadline = milliseconds < 0 ? Never : Since + (milliseconds * Time.Millisecond);
        DeriveFromState();
    }

    private void DeriveFromState()
    {
        WantsVacuum = State == VacuumState.On || State == VacuumState.RunOn || State == VacuumState.ByHand;
        IsWaitingForSurge = State == VacuumState.Starting && _settings.StartDelayMilliseconds == CoreSettings.AfterSurge;
        NextLook = Ignored.IsThere ? 0
            : IsWaitingForSurge && Surge.IsWatching ? Never
            : State == VacuumState.Idle ? _burstAt
            : State == VacuumState.On && !_hasWarned && _deadline != Never ? _deadline - WarningMicroseconds
            : _deadline;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        State = (VacuumState)tape.Number((int)State);
        Since = tape.Number(Since);
        _deadline = tape.Number(_deadline);
        IsToolRunning = tape.Flag(IsToolRunning);
        IsStretched = tape.Flag(IsStretched);
        RanTooLong = tape.Flag(RanTooLong);
        IsHeldOff = tape.Flag(IsHeldOff);
        _hasWarned = tape.Flag(_hasWarned);
        _burstAt = tape.Number(_burstAt);
        _burstMilliseconds = tape.Number(_burstMilliseconds);
        _burstToldAt = tape.Number(_burstToldAt);
        _surgeEnd = tape.Number(_surgeEnd);
        _isSurgeOver = tape.Flag(_isSurgeOver);
        _lessLooks = tape.Number(_lessLooks);
        Surge.Exchange(tape);
        _knownBy = tape.Number(_knownBy);
        Book.Exchange(tape);
        Ignored.Exchange(tape);
        Guess.Exchange(tape);
        Second.Exchange(tape);
        Starts.Exchange(tape);
        DeriveFromState();
    }
}
