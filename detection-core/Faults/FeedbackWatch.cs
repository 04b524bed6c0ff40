namespace NanoDustSwitch.Detection;

/// <summary>
/// Finds out whether the vacuum's own current runs through the tool's sensor: then it keeps the tool <em>running</em> when
/// there is none, and the vacuum never stops.
/// </summary>
/// <remarks>
/// A current that jumps as our relay closes, at two closings in a row, is suspected; so is one at whose closing the tool's own
/// surge would have hidden that. Then the relay is opened for a moment. When the current goes as a contact opens, all at once,
/// stays away, and does so three times in a row, as long after our command, it is proved. A tool that is seen to stop while the
/// relay is closed speaks against it, as does a closing at which nothing jumps. <para> While the tool runs as well, its current
/// may hide the vacuum's. So a probe that shows nothing is made again when the current has fallen and stays, for the tool may
/// have stopped, or after twice the time. The relay is never closed from here, only kept open.
/// </para>
/// </remarks>
public sealed class FeedbackWatch
{
    // From our command to the end of the contact's bounce, and a cycle and a half of the vacuum's start surge.
    private const long JumpMicroseconds = 80000;

    // Until the vacuum's own start surge is over: recorded vacuums take 0.7 to 0.9 s to within 15 %.
    private const long FirstProbeAfter = 1500000;
    private const long ProbeAfterFall = 1000000;
    private const long LongestWait = 96L * 1000000;

    // A tool's own surge is mostly over by then.
    private const long SettlingMicroseconds = 1000000;

    // The driver is sure to bridge the one, and with parts of 20 % and the contact's time it has let go by the other.
    private const long SoonestOpen = Bucket.Microseconds * 60L;
    private const long LatestOpen = 600000;

    // A contact that opens, and the cycle until the window has seen it.
    private const long GoMicroseconds = 45000;
    private const long SameMicroseconds = 15000;
    private const long GoneMicroseconds = 300000;

    private const int JumpsToSuspect = 2;

    // Two alike came by chance once in a few thousand starts of a user whose tools stop in every second probe.
    private const int GoesToProve = 3;

    private readonly NoticeQueue _notices;
    private readonly int _noRoom;
    private FeedbackStage _stage;
    private long _since;
    private int _before;
    private int _greatest;
    private int _least;
    private int _jumps;
    private int _goes;
    private long _lag;
    private int _level = int.MaxValue;
    private long _wait = FirstProbeAfter;
    private long _lowSince;
    private long _fullAt;
    private long _goneAt = -1;

    /// <summary>Whether there is something to look at: else <see cref="Accept"/> need not be called.</summary>
    public bool IsWatching;

    /// <summary>Whether the relay is to be kept open for a probe.</summary>
    public bool IsProbing;

    /// <summary>Initializes a new instance of the <see cref="FeedbackWatch"/> class.</summary>
    /// <param name="notices">Where probes are told.</param>
    /// <param name="fullScale">Greatest count of the converter.</param>
    public FeedbackWatch(NoticeQueue notices, int fullScale)
    {
        _notices = notices;

        // A Hall module clips at three quarters of the converter's range. Less than a fifth above this, nothing can be seen to
        // jump.
        _noRoom = fullScale * SensorScale.PartsACount * 5 / 8;
    }

    /// <summary>Gets the swing that went with our relay, in sixteenths of a count.</summary>
    public int Level
    {
        get { return _level; }
    }

    /// <summary>Notes that the relay was told to close.</summary>
    /// <param name="swing">Swing at this moment, in sixteenths of a count.</param>
    /// <param name="least">Swing below which a tool does not run; a smaller current of the vacuum does no harm.</param>
    /// <param name="now">Time in microseconds.</param>
    public void NoteClosing(int swing, int least, long now)
    {
        _before = swing;
        _greatest = 0;
        _least = least;
        Enter(FeedbackStage.Closing, now);
    }

    /// <summary>Notes that the relay was told to open.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void NoteOpening(long now)
    {
        if (!IsProbing)
        {
            Relax();
            Enter(FeedbackStage.Resting, now);
        }
    }

    /// <summary>Notes that the tool was seen to stop while the relay is closed.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void NoteStop(long now)
    {
        // What stopped with the last opening may be seen a little later.
        if (now - _since > SettlingMicroseconds)
        {
            Forget(now);
        }
    }

    /// <summary>Forgets every suspicion.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Forget(long now)
    {
        _jumps = 0;
        _goes = 0;
        IsProbing = false;
        Relax();
        Enter(FeedbackStage.Resting, now);
    }

    /// <summary>Looks at a bucket.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="isValid">Whether it can be believed.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>True when it is proved.</returns>
    public bool Accept(int swing, bool isValid, long now)
    {
        if (_stage == FeedbackStage.Probing)
        {
            return Probe(swing, isValid, now);
        }

        if (_stage == FeedbackStage.Suspecting)
        {
            Suspect(swing, isValid, now);
        }
        else if (!isValid)
        {
            // Whether it has jumped nobody knows.
            Forget(now);
        }
        else if (_stage == FeedbackStage.Closing)
        {
            _greatest = swing > _greatest ? swing : _greatest;
            if (now - _since >= JumpMicroseconds)
            {
                JudgeJump(now);
            }
        }
        else if (swing < _least)
        {
            Forget(now);
        }
        else if (now - _since >= SettlingMicroseconds)
        {
            JudgeSurge(swing, now);
        }

        return false;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _stage = (FeedbackStage)tape.Number((int)_stage);
        _since = tape.Number(_since);
        _before = tape.Number(_before);
        _greatest = tape.Number(_greatest);
        _least = tape.Number(_least);
        _jumps = tape.Number(_jumps);
        _goes = tape.Number(_goes);
        _lag = tape.Number(_lag);
        _level = tape.Number(_level);
        _wait = tape.Number(_wait);
        _lowSince = tape.Number(_lowSince);
        _fullAt = tape.Number(_fullAt);
        _goneAt = tape.Number(_goneAt);
        IsWatching = _stage != FeedbackStage.Resting;
        IsProbing = _stage == FeedbackStage.Probing;
    }

    private void JudgeJump(long now)
    {
        int jump = _greatest - _before;
        if (_before >= _noRoom || (jump >= _least && jump >= _before >> 4))
        {
            CountJump();
        }
        else
        {
            _stage = FeedbackStage.Settling;
        }
    }

    // A current that was so much greater as we closed hid the vacuum's, the more so where it clips.
    private void JudgeSurge(int swing, long now)
    {
        if (swing <= _before - (_before >> 3))
        {
            CountJump();
        }
        else
        {
            // After a probe it is suspected anew at the next jump: the tool may have stopped just as the vacuum started.
            int left = _jumps >= JumpsToSuspect ? JumpsToSuspect - 1 : 0;
            Forget(now);
            _jumps = left;
        }
    }

    private void CountJump()
    {
        _jumps++;
        if (_jumps < JumpsToSuspect)
        {
            Rest();
            return;
        }

        _lowSince = _since;
        _stage = FeedbackStage.Suspecting;
    }

    private void Suspect(int swing, bool isValid, long now)
    {
        bool isSure = isValid && swing >= _least;
        if (!isSure || swing > _level - (_level >> 3))
        {
            _lowSince = now;
        }

        if (isSure && now - _since >= FirstProbeAfter && (now - _since >= _wait || now - _lowSince >= ProbeAfterFall))
        {
            _wait = _wait < LongestWait ? _wait * 2 : _wait;
            _level = swing;
            _fullAt = now;
            _goneAt = -1;
            IsProbing = true;
            Enter(FeedbackStage.Probing, now);
        }
    }

    private bool Probe(int swing, bool isValid, long now)
    {
        if (!isValid)
        {
            return EndProbe(false, now);
        }

        bool isHalf = swing < _level >> 1;
        if (_goneAt >= 0)
        {
            return isHalf ? now - _goneAt >= GoneMicroseconds && EndProbe(true, now) : EndProbe(false, now);
        }

        if (swing >= _level - (_level >> 2))
        {
            _fullAt = now;
        }
        else if (isHalf)
        {
            if (now - _fullAt > GoMicroseconds || now - _since < SoonestOpen)
            {
                return EndProbe(false, now);
            }

            _goneAt = now;
        }

        return now - _since >= LatestOpen && EndProbe(false, now);
    }

    private bool EndProbe(bool hasGone, long now)
    {
        long lag = hasGone ? _goneAt - _since : now - _since;
        _notices.Add(NoticeKind.Probed, hasGone ? 1 : 0, 0, (int)(lag / 1000), now);
        IsProbing = false;
        Rest();
        if (!hasGone)
        {
            _goes = 0;
            return false;
        }

        // Gone again, but not alike: one of the two was chance, and the later one counts.
        bool isSame = lag - _lag <= SameMicroseconds && _lag - lag <= SameMicroseconds;
        if (isSame || _goes == 0)
        {
            _wait = FirstProbeAfter;
        }

        _goes = isSame && _goes > 0 ? _goes + 1 : 1;
        _lag = lag;
        return _goes >= GoesToProve;
    }

    private void Enter(FeedbackStage stage, long now)
    {
        _since = now;
        _stage = stage;
        IsWatching = stage != FeedbackStage.Resting;
    }

    private void Relax()
    {
        _level = int.MaxValue;
        _wait = FirstProbeAfter;
    }

    // As it is; since when the relay is closed stays known.
    private void Rest()
    {
        _stage = FeedbackStage.Resting;
        IsWatching = false;
    }
}
