namespace NanoDustSwitch.Detection;

/// <summary>Judges the readings beside the line of decision, and keeps the vacuum off while they cannot be believed.</summary>
public sealed class FaultMonitor
{
    /// <summary>Number of faults.</summary>
    public const int Count = 16;

    /// <summary>Good readings that end a fault, in microseconds.</summary>
    public const long GoodMicroseconds = 10L * 1000000;

    /// <summary>Longest time without a valid window, in microseconds.</summary>
    public const long LongestGapMicroseconds = 1000000;

    // 50 ms wholly at one rail: no alternating current of 45 Hz or more does that, not even a surge that clips.
    private const int RailBuckets = 20;

    private const int FrozenBuckets = 2 * Bucket.ASecond;

    // One failed read is a hiccup, eight in a row without a good one between them are not.
    private const int FailedReads = 8;

    // Where the counts of a run stop; far above all that is asked of them.
    private const int LongestRun = 1000000;

    // A current that clips does so in every cycle; half a second without is an end.
    private const long ClipPauseMicroseconds = 500000;

    private const int LookBuckets = Bucket.ASecond / 10;

    private readonly FaultState[] _states = new FaultState[Count];
    private readonly NoticeQueue _notices;
    private int _railRun;
    private int _frozenRun;
    private int _frozenAt = -1;
    private int _failedRun;
    private int _active;
    private int _looks;
    private bool _wasInvalid;
    private long _firstClip;
    private long _lastClip = long.MinValue / 2;

    /// <summary>Whether a fault keeps the vacuum off.</summary>
    public bool HoldsOff;

    /// <summary>
    /// Whether no fault stands and none is in the making: then an ordinary bucket with a valid window needs no judging beyond
    /// <see cref="LastValid"/>.
    /// </summary>
    public bool IsCalm;

    /// <summary>End of the last bucket with a valid window, in microseconds.</summary>
    public long LastValid;

    /// <summary>Initializes a new instance of the <see cref="FaultMonitor"/> class.</summary>
    /// <param name="notices">Where faults are told.</param>
    /// <param name="now">Time in microseconds.</param>
    public FaultMonitor(NoticeQueue notices, long now)
    {
        _notices = notices;
        LastValid = now;
        for (int i = 0; i < Count; i++)
        {
            _states[i] = new FaultState();
        }
    }

    /// <summary>Tells what is known of a fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>Its state, live.</returns>
    public FaultState this[Fault fault]
    {
        get { return _states[(int)fault]; }
    }

    /// <summary>Tells whether a fault keeps the vacuum off.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>True for those that do; the others only say something.</returns>
    public static bool KeepsOff(Fault fault)
    {
        return fault <= Fault.ClockStands || fault == Fault.RestartLoop || fault == Fault.RelayLine || fault >= Fault.VacuumStays;
    }

    /// <summary>Judges a bucket.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <param name="isWindowValid">Whether the swing's window is valid after it.</param>
    /// <param name="isToolRunning">Whether the tool was running before it.</param>
    public void Accept(Bucket bucket, bool isWindowValid, bool isToolRunning)
    {
        long now = bucket.EndTime;
        if (bucket.Failed != 0)
        {
            _failedRun = Saturated(_failedRun, bucket.Failed);
            if (_failedRun >= FailedReads && bucket.Count == 0)
            {
                See(Fault.ConverterFails, _failedRun, now);
            }
        }

        if (bucket.Count > 0)
        {
            _failedRun = 0;
            if (bucket.Least == bucket.Greatest)
            {
                JudgeFrozen(bucket.Least, now);
            }
            else
            {
                _frozenRun = 0;
            }

            if (bucket.AtLowRail + bucket.AtHighRail != 0)
            {
                JudgeRail(bucket, isToolRunning, now);
            }
            else
            {
                _railRun = 0;
            }
        }

        if (isWindowValid)
        {
            if (_states[(int)Fault.NoWindow].IsActive)
            {
                End(Fault.NoWindow, now);
            }

            LastValid = now;
        }
        else if (now - LastValid > LongestGapMicroseconds)
        {
            See(Fault.NoWindow, Clip((now - LastValid) / 1000), now);
        }

        if (_active != 0)
        {
            LookForEnds(isWindowValid, now);
        }

        IsCalm = (_active | _railRun | _frozenRun | _failedRun) == 0;
    }

    /// <summary>Judges the mean of a measuring window against the band in which a sensor rests.</summary>
    /// <param name="millivolts">Mean at the converter pin in mV.</param>
    /// <param name="least">Lower end of the band in mV.</param>
    /// <param name="greatest">Upper end of the band in mV.</param>
    /// <param name="now">Time in microseconds.</param>
    public void JudgeMidpoint(int millivolts, int least, int greatest, long now)
    {
        if ((millivolts < least || millivolts > greatest) && !_states[(int)Fault.SensorAtRail].IsActive)
        {
            See(Fault.MidpointOut, millivolts, now);
        }
    }

    /// <summary>Notes that a fault is seen now.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="figure">What was seen.</param>
    /// <param name="now">Time in microseconds.</param>
    public void See(Fault fault, int figure, long now)
    {
        FaultState state = _states[(int)fault];
        state.LastSeen = now;
        if (state.IsActive)
        {
            return;
        }

        state.Raise(figure, now, fault <= Fault.ConverterFails);
        _notices.Add(NoticeKind.FaultRaised, (int)fault, state.IsLatched ? 1 : 0, figure, now);
        Recount();
    }

    /// <summary>Puts a fault up to stay until cleared, for example one that stood before a restart.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="figure">What was seen.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Latch(Fault fault, int figure, long now)
    {
        _states[(int)fault].IsLatched = true;
        See(fault, figure, now);
    }

    /// <summary>Ends a fault, unless it stays until cleared.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="now">Time in microseconds.</param>
    public void End(Fault fault, long now)
    {
        FaultState state = _states[(int)fault];
        if (!state.IsActive || state.IsLatched)
        {
            return;
        }

        state.IsActive = false;
        _notices.Add(NoticeKind.FaultEnded, (int)fault, 0, Clip((now - state.Since) / 1000000), now);
        Recount();
    }

    /// <summary>Brings a fault that its owner judges to what holds now.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="holds">Whether it holds.</param>
    /// <param name="figure">What was seen.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Set(Fault fault, bool holds, int figure, long now)
    {
        if (holds)
        {
            See(fault, figure, now);
        }
        else
        {
            End(fault, now);
        }
    }

    /// <summary>
    /// A person clears what keeps the vacuum off. A fault that is still seen comes up again at once; one that only says something
    /// ends when it is over.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    public void Clear(long now)
    {
        for (int i = 0; i < Count; i++)
        {
            if (!KeepsOff((Fault)i))
            {
                continue;
            }

            FaultState state = _states[i];
            if (state.IsActive)
            {
                state.IsLatched = false;
                End((Fault)i, now);
            }

            state.Clear();
        }

        _railRun = 0;
        _frozenRun = 0;
        _failedRun = 0;
        LastValid = now;
    }

    private static int Clip(long value)
    {
        return value > int.MaxValue ? int.MaxValue : (int)value;
    }

    private void JudgeFrozen(int at, long now)
    {
        // A bucket with a single reading has no spread either; only the same value again and again is frozen.
        if (at != _frozenAt)
        {
            _frozenAt = at;
            _frozenRun = 0;
        }
        else
        {
            _frozenRun = Saturated(_frozenRun, 1);
        }

        // An open sensor stands still as well; that is one fault and not two.
        if (_frozenRun >= FrozenBuckets && !_states[(int)Fault.SensorAtRail].IsActive)
        {
            See(Fault.SensorFrozen, at, now);
        }
    }

    private void JudgeRail(Bucket bucket, bool isToolRunning, long now)
    {
        if (bucket.AtLowRail == bucket.Count || bucket.AtHighRail == bucket.Count)
        {
            _railRun = Saturated(_railRun, 1);
            if (_railRun >= RailBuckets)
            {
                See(Fault.SensorAtRail, bucket.Least, now);
            }
        }
        else
        {
            _railRun = 0;
            if (isToolRunning)
            {
                JudgeClipping(bucket.AtLowRail + bucket.AtHighRail, now);
            }
        }
    }

    // A start may clip, the first tool's or a second one's; what goes on for longer than any start surge is over range.
    private void JudgeClipping(int readings, long now)
    {
        if (now - _lastClip > ClipPauseMicroseconds)
        {
            _firstClip = now;
        }

        _lastClip = now;
        if (now - _firstClip > CoreSettings.LongestSurgeMilliseconds * 1000L)
        {
            See(Fault.OverRange, readings, now);
        }
    }

    private static int Saturated(int run, int more)
    {
        return run < LongestRun ? run + more : run;
    }

    // Ten seconds of good readings are measured to a tenth.
    private void LookForEnds(bool isWindowValid, long now)
    {
        _wasInvalid = _wasInvalid || !isWindowValid;
        if (++_looks >= LookBuckets)
        {
            EndWhatIsOver(!_wasInvalid, now);
            _looks = 0;
            _wasInvalid = false;
        }
    }

    private void EndWhatIsOver(bool wasValid, long now)
    {
        for (int i = 0; i <= (int)Fault.OverRange; i++)
        {
            FaultState state = _states[i];
            bool endsByGoodReadings = i <= (int)Fault.ConverterFails || i == (int)Fault.OverRange;
            if (!state.IsActive || !endsByGoodReadings)
            {
                continue;
            }

            if (!wasValid)
            {
                // No readings are no good readings.
                state.LastSeen = now;
            }
            else if (now - state.LastSeen >= GoodMicroseconds)
            {
                End((Fault)i, now);
            }
        }
    }

    private void Recount()
    {
        _active = 0;
        HoldsOff = false;
        for (int i = 0; i < Count; i++)
        {
            if (_states[i].IsActive)
            {
                _active++;
                HoldsOff = HoldsOff || KeepsOff((Fault)i);
                IsCalm = false;
            }
        }
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        for (int i = 0; i < Count; i++)
        {
            _states[i].Exchange(tape);
        }

        _railRun = tape.Number(_railRun);
        _frozenRun = tape.Number(_frozenRun);
        _frozenAt = tape.Number(_frozenAt);
        _failedRun = tape.Number(_failedRun);
        LastValid = tape.Number(LastValid);
        _looks = tape.Number(_looks);
        _wasInvalid = tape.Flag(_wasInvalid);
        _firstClip = tape.Number(_firstClip);
        _lastClip = tape.Number(_lastClip);
        IsCalm = false;
        Recount();
    }
}
