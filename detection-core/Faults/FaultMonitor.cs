namespace NanoDustSwitch.Detection;

/// <summary>
/// Knows which faults stand and keeps the vacuum off while one of them says so. It looks at the readings itself; all other parts
/// tell it what they see. What is done about each fault is in <see cref="FaultTable"/>.
/// </summary>
public sealed class FaultMonitor
{
    /// <summary>Number of faults.</summary>
    public const int Count = 18;

    /// <summary>How long the readings must be good before a fault of the sensor ends, in microseconds.</summary>
    public const long GoodMicroseconds = 10 * Time.Second;

    /// <summary>Longest time without a valid window, in microseconds.</summary>
    public const long LongestGapMicroseconds = Time.Second;

    // For 50 ms every reading is at the same rail. No alternating current of 45 Hz or more does that, not even a surge that
    // clips.
    private const int RailBuckets = 20;

    private const int FrozenBuckets = 2 * Bucket.ASecond;

    // A single failed read happens. Eight in a row, without a good one between them, mean that the converter is broken.
    private const int FailedReads = 8;

    // The counters of rows stop here, so that they never overflow. All limits on them are far below.
    private const int LongestRun = 1000000;

    // A current that is too large for the sensor clips in every cycle. After half a second without clipping it is over.
    private const long ClipPauseMicroseconds = 500000;

    // Whether a fault has ended is looked at every 40 buckets only, to save time.
    private const int LookBuckets = Bucket.ASecond / 10;

    private readonly FaultState[] _states = new FaultState[Count];
    private readonly NoticeQueue _notices;
    private int _railRun;
    private int _frozenRun;
    private int _frozenAt = -1;
    private int _failedRun;
    private int _looks;
    private bool _wasInvalid;
    private long _firstClip;
    private long _lastClip = long.MinValue / 2;

    /// <summary>The faults that stand, as <see cref="FaultBits"/>.</summary>
    public int Standing;

    /// <summary>Whether one of them keeps the vacuum off.</summary>
    public bool HoldsOff;

    /// <summary>Whether a person should have a look because of one of them.</summary>
    public bool WantsLook;

    /// <summary>
    /// Whether the vacuum draws its current although the relay was told to open, so that nothing here can switch it off. It ends
    /// only when the vacuum's own sensor shows that the current has gone, or when that sensor is taken out of the settings.
    /// </summary>
    public bool IsVacuumStuck;

    /// <summary>
    /// When a fault with the trait <see cref="FaultTraits.SoundsEachTime"/> was last seen, in microseconds; 0 for never.
    /// </summary>
    public long LastSound;

    /// <summary>
    /// True when no fault stands and nothing bad was in the last bucket. Then an ordinary bucket with a valid window need not be
    /// judged at all; only <see cref="LastValid"/> has to be set.
    /// </summary>
    public bool IsCalm;

    /// <summary>End of the last bucket with a valid window, in microseconds.</summary>
    public long LastValid;

    /// <summary>Initializes a new instance of the <see cref="FaultMonitor"/> class.</summary>
    /// <param name="notices">Gets a notice of every fault that comes up or ends.</param>
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

    /// <summary>Gives what is known of a fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>Its state: the monitor's own object, which changes with the fault.</returns>
    public FaultState this[Fault fault]
    {
        get { return _states[(int)fault]; }
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

        if (Standing != 0)
        {
            LookForEnds(isWindowValid, now);
        }

        IsCalm = (Standing | _railRun | _frozenRun | _failedRun) == 0;
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

    /// <summary>Notes that a fault is seen now. When it does not stand yet, it comes up.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="figure">What was seen; the meaning depends on the fault.</param>
    /// <param name="now">Time in microseconds.</param>
    public void See(Fault fault, int figure, long now)
    {
        FaultState state = _states[(int)fault];
        FaultTraits traits = FaultTable.Of(fault);
        state.LastSeen = now;
        if ((traits & FaultTraits.SoundsEachTime) != FaultTraits.None)
        {
            LastSound = now;
        }

        if (!state.IsActive)
        {
            state.Raise(figure, now, traits);
            _notices.Add(NoticeKind.FaultRaised, (int)fault, state.IsLatched ? 1 : 0, figure, now);
            Recount();
        }
    }

    /// <summary>Raises a fault that waited for a person before a restart, so that it still does.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Recall(Fault fault, long now)
    {
        _states[(int)fault].IsLatched = true;
        See(fault, FaultState.FromBefore, now);
    }

    /// <summary>Gives the faults that have to be recalled after a restart of the board.</summary>
    /// <returns>Those that wait for a person and outlive a restart, as <see cref="FaultBits"/>.</returns>
    public int ToRecall()
    {
        int bits = 0;
        for (int i = FaultBits.Next(Standing, -1); i >= 0; i = FaultBits.Next(Standing, i))
        {
            if (_states[i].IsLatched && FaultTable.Has((Fault)i, FaultTraits.OutlivesRestart))
            {
                bits |= FaultBits.Of((Fault)i);
            }
        }

        return bits;
    }

    /// <summary>Ends a fault that is over; one that waits for a person stays.</summary>
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
        _notices.Add(NoticeKind.FaultEnded, (int)fault, 0, Clip((now - state.Since) / Time.Second), now);
        Recount();
    }

    /// <summary>For an owner who judges again and again: notes that its fault is seen, or ends it.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="holds">Whether it is seen now.</param>
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
    /// A person clears all faults that keep the vacuum off. One whose cause is still there comes up again as soon as it is seen;
    /// that of a vacuum that runs on stays while it does, so that no look at the switch misses it. The other faults cannot be
    /// cleared: they end when they are over.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    public void Clear(long now)
    {
        for (int i = 0; i < Count; i++)
        {
            bool isThere = IsVacuumStuck && i == (int)Fault.VacuumStays;
            if (FaultTable.Has((Fault)i, FaultTraits.KeepsVacuumOff) && !isThere)
            {
                _states[i].IsLatched = false;
                End((Fault)i, now);
                _states[i].Reset();
            }
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
        // A bucket of a single reading also has no spread, so what counts is that the next buckets show the very same value.
        if (at != _frozenAt)
        {
            _frozenAt = at;
            _frozenRun = 0;
        }
        else
        {
            _frozenRun = Saturated(_frozenRun, 1);
        }

        // A sensor that is not connected stands still as well. That is one fault and not two.
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

    // Any tool's start surge may clip. What goes on clipping for longer than the longest surge is more than the sensor can show.
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

    // Looks ten times a second, so the ten seconds of good readings are measured to a tenth of a second.
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
        int standing = Standing;
        for (int i = FaultBits.Next(standing, -1); i >= 0; i = FaultBits.Next(standing, i))
        {
            FaultState state = _states[i];
            if (!FaultTable.Has((Fault)i, FaultTraits.EndsAfterGoodReadings))
            {
                continue;
            }

            if (!wasValid)
            {
                // Where there are no readings, none are good: the ten seconds begin again.
                state.LastSeen = now;
            }
            else if (now - state.LastSeen >= GoodMicroseconds)
            {
                End((Fault)i, now);
            }
        }
    }

    // Works out what follows from the faults that stand.
    private void Recount()
    {
        Standing = 0;
        FaultTraits traits = FaultTraits.None;
        for (int i = 0; i < Count; i++)
        {
            if (_states[i].IsActive)
            {
                Standing |= FaultBits.Of((Fault)i);
                traits |= FaultTable.Of((Fault)i);
                IsCalm = false;
            }
        }

        HoldsOff = (traits & FaultTraits.KeepsVacuumOff) != FaultTraits.None;
        WantsLook = (traits & FaultTraits.WantsLook) != FaultTraits.None;
    }

    /// <summary>Writes the state to a tape, or takes it from there.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        LastSound = 0;
        for (int i = 0; i < Count; i++)
        {
            FaultState state = _states[i];
            state.Exchange(tape);
            if (FaultTable.Has((Fault)i, FaultTraits.SoundsEachTime) && state.LastSeen > LastSound)
            {
                LastSound = state.LastSeen;
            }
        }

        IsVacuumStuck = tape.Flag(IsVacuumStuck);
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
