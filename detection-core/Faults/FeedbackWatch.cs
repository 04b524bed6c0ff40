namespace NanoDustSwitch.Detection;

/// <summary>
/// Finds out whether the vacuum's own current runs through the tool's sensor. If it does, the switch takes the vacuum for a
/// running tool, and the vacuum never stops.
/// </summary>
/// <remarks>
/// The first sign is a current that jumps as the relay closes. After two such closings in a row the wiring is suspected. (Where
/// the tool's own start surge would have hidden a jump, the closing counts as one with a jump.) Then comes the test, a probe: the
/// relay opens for a moment. If the vacuum feeds the sensor, the current must fall all at once, as long after the command as the
/// contact takes, and must stay away. Three such probes in a row with the same delay prove it. What speaks against it is a tool
/// that stops while the relay is closed, and a closing without a jump.
/// <para>
/// A tool that runs as well may hide the vacuum's current. So a probe that showed nothing is repeated: when the current has
/// fallen and stays low, because the tool may have stopped, or else after twice the time. This class never closes the relay, it
/// only opens it.
/// </para>
/// </remarks>
public sealed class FeedbackWatch
{
    // The contact closes and has bounced by then, and a cycle and a half of the vacuum's start surge is seen.
    private const long JumpMicroseconds = 80000;

    // The first probe waits until the vacuum's own start surge is over: recorded vacuums take 0.7 to 0.9 s to within 15 %.
    private const long FirstProbeMicroseconds = 1500000;

    // A current that has fallen must stay low for so long before it is worth another probe.
    private const long FallMicroseconds = Time.Second;

    private const long LongestWaitMicroseconds = 96 * Time.Second;

    // By then the start surge of a tool is mostly over.
    private const long SettlingMicroseconds = Time.Second;

    // When the contact can open after the command. Before the first time the driver still holds the relay in any case. By the
    // second it has let go and the contact has opened, also with parts that are 20 % off.
    private const long SoonestOpenMicroseconds = Bucket.Microseconds * 60L;
    private const long LatestOpenMicroseconds = 600000;

    // From full current to less than half: the time of a contact that opens, and a cycle until the window shows it.
    private const long GoMicroseconds = 45000;

    // Most by which the delays of two probes may differ.
    private const long SameMicroseconds = 15000;

    // The current must stay away for so long.
    private const long GoneMicroseconds = 300000;

    private const int JumpsToSuspect = 2;

    // Two are not enough: with a user whose tools stop during every second probe, two delays were alike by chance once in a few
    // thousand starts.
    private const int GoesToProve = 3;

    private readonly NoticeQueue _notices;
    private readonly int _noRoom;
    private FeedbackStage _stage;
    private long _since;

    // At the closing: the swing before it, the greatest one since, and the least one that keeps a tool running.
    private int _before;
    private int _greatest;
    private int _least;

    // Closings with a jump in a row; probes in a row at which the current went after the same delay; and that delay.
    private int _jumps;
    private int _goes;
    private long _lag;

    // The swing at the beginning of the last probe, how long to wait for the next, and since when the swing has been lower.
    private int _level = int.MaxValue;
    private long _wait = FirstProbeMicroseconds;
    private long _lowSince;

    // During a probe: when the swing was last near its level, and when it fell below half of it (-1 until then).
    private long _fullAt;
    private long _goneAt = -1;

    /// <summary>Whether <see cref="Accept"/> has something to look for; else it need not be called.</summary>
    public bool IsWatching;

    /// <summary>Whether the relay must stay open for a probe.</summary>
    public bool IsProbing;

    /// <summary>Initializes a new instance of the <see cref="FeedbackWatch"/> class.</summary>
    /// <param name="notices">Gets a notice of every probe.</param>
    /// <param name="fullScale">Greatest count of the converter.</param>
    public FeedbackWatch(NoticeQueue notices, int fullScale)
    {
        _notices = notices;

        // A Hall module clips at three quarters of the converter's range, so a swing above five eighths has no room to jump.
        _noRoom = fullScale * SensorScale.PartsACount * 5 / 8;
    }

    /// <summary>
    /// Gets the swing at the beginning of the last probe, in sixteenths of a count; int.MaxValue until there is
    /// one since the relay closed.
    /// </summary>
    public int Level
    {
        get { return _level; }
    }

    /// <summary>Notes that the relay was told to close.</summary>
    /// <param name="swing">Swing at this moment, in sixteenths of a count.</param>
    /// <param name="least">Swing below which no tool runs: a vacuum that draws less than this does no harm.</param>
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
            BeginWaitsAfresh();
            Enter(FeedbackStage.Resting, now);
        }
    }

    /// <summary>Notes that the tool was seen to stop while the relay is closed.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void NoteStop(long now)
    {
        // In the first second it may be the current that went as the relay opened before, which is seen a little late.
        if (now - _since > SettlingMicroseconds)
        {
            Reset(now);
        }
    }

    /// <summary>Begins afresh, with no suspicion.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Reset(long now)
    {
        _jumps = 0;
        _goes = 0;
        IsProbing = false;
        BeginWaitsAfresh();
        Enter(FeedbackStage.Resting, now);
    }

    /// <summary>Looks at a bucket.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="isValid">Whether it can be believed.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>True when it is proved that the vacuum feeds the tool's sensor.</returns>
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
            // Nobody knows whether the current has jumped, so this closing says nothing.
            Reset(now);
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
            Reset(now);
        }
        else if (now - _since >= SettlingMicroseconds)
        {
            JudgeSurge(swing, now);
        }

        return false;
    }

    /// <summary>Writes the state to a tape, or takes it from there.</summary>
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

    // Where the current has fallen by an eighth since the relay closed, the tool's surge was large enough to hide a jump.
    private void JudgeSurge(int swing, long now)
    {
        if (swing <= _before - (_before >> 3))
        {
            CountJump();
        }
        else
        {
            // After a suspicion the next jump alone is enough: the tool may have stopped just as the vacuum started, and hidden
            // it.
            int left = _jumps >= JumpsToSuspect ? JumpsToSuspect - 1 : 0;
            Reset(now);
            _jumps = left;
        }
    }

    private void CountJump()
    {
        _jumps++;
        if (_jumps < JumpsToSuspect)
        {
            StopWatching();
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

        long closed = now - _since;
        if (isSure && closed >= FirstProbeMicroseconds && (closed >= _wait || now - _lowSince >= FallMicroseconds))
        {
            _wait = _wait < LongestWaitMicroseconds ? _wait * 2 : _wait;
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
            if (now - _fullAt > GoMicroseconds || now - _since < SoonestOpenMicroseconds)
            {
                return EndProbe(false, now);
            }

            _goneAt = now;
        }

        return now - _since >= LatestOpenMicroseconds && EndProbe(false, now);
    }

    private bool EndProbe(bool hasGone, long now)
    {
        long lag = hasGone ? _goneAt - _since : now - _since;
        _notices.Add(NoticeKind.Probed, hasGone ? 1 : 0, 0, (int)(lag / 1000), now);
        IsProbing = false;
        StopWatching();
        if (!hasGone)
        {
            _goes = 0;
            return false;
        }

        // When the delay is not that of the probe before, one of the two was chance. Then the row begins again with this one.
        bool isSame = lag - _lag <= SameMicroseconds && _lag - lag <= SameMicroseconds;
        if (isSame || _goes == 0)
        {
            _wait = FirstProbeMicroseconds;
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

    private void BeginWaitsAfresh()
    {
        _level = int.MaxValue;
        _wait = FirstProbeMicroseconds;
    }

    // Nothing more to see until the relay closes again. Unlike Enter this keeps the time of the closing, which NoteStop needs.
    private void StopWatching()
    {
        _stage = FeedbackStage.Resting;
        IsWatching = false;
    }
}
