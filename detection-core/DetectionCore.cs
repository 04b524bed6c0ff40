namespace NanoDustSwitch.Detection;

/// <summary>
/// What the current means and what the vacuum should do: a pure function of buckets, events and settings. No board,
/// no text, no clock of its own.
/// </summary>
/// <remarks>
/// The way of a bucket: swing window, run detector, vacuum control, relay gate. Beside it: current meter, midpoint, noise floors,
/// faults; and while the fast lane sees no tool, the slow lane, which finds smaller ones in half a second.
/// </remarks>
public sealed class DetectionCore
{
    // The floor is about the greatest swing of a second, and a start must not come of noise in a year: by the benchmark 2.35 times it is
    // enough in the fast lane and 2.4 times in the slow one. The stop level only keeps clear of it; common practice, no source.
    private const int StartOverFloorPercent = 235;
    private const int StopOverFloorPercent = 125;

    // A taught start-at may lie below the fast lane's noise, where only the slow lane finds the tool.
    private const int CapOverNoisePercent = 125;

    // The slow lane's answers of white noise are a quarter of the fast lane's swings; what it learns is its own.
    private const int SlowStartOverFloorPercent = 240;
    private const int SlowLooksASecond = 10;
    private const int SlowShareOfNoise = 4;

    private readonly SwingWindow _window = new SwingWindow();
    private readonly RunDetector _detector = new RunDetector();
    private readonly NoiseFloor _floor = new NoiseFloor(Bucket.ASecond / 2);
    private readonly SlowLane _slow = new SlowLane();
    private readonly NoiseFloor _slowFloor = new NoiseFloor(SlowLooksASecond);
    private readonly CurrentMeter _meter = new CurrentMeter();
    private readonly Midpoint _midpoint = new Midpoint();
    private readonly RelayGate _gate = new RelayGate();
    private readonly VacuumLine _vacuumLine = new VacuumLine();
    private readonly ConverterScale _converter;
    private CoreSettings _settings;
    private SensorScale _scale;
    private SensorScale _vacuumScale;

    /// <summary>The notices that wait to be read.</summary>
    public readonly NoticeQueue Notices = new NoticeQueue();

    /// <summary>The vacuum control.</summary>
    public readonly VacuumControl Vacuum;

    /// <summary>The faults.</summary>
    public readonly FaultMonitor Faults;

    /// <summary>Whether the relay should be closed now.</summary>
    public bool IsRelayClosed;

    private int _startLevel;
    private int _stopLevel;
    private int _slowStartLevel;
    private int _slowStopLevel;
    private bool _isNoiseLimited;
    private bool _isSlow;
    private bool _isUnsure;
    private bool _isSecondMean;
    private long _lastEnd;
    private bool _idleMeasured;
    private VacuumState _judgedState;

    /// <summary>Initializes a new instance of the <see cref="DetectionCore"/> class.</summary>
    /// <param name="converter">What the board's converter gives.</param>
    /// <param name="settings">The settings to begin with.</param>
    /// <param name="now">Time in microseconds.</param>
    public DetectionCore(ConverterScale converter, CoreSettings settings, long now)
    {
        _converter = converter;
        Vacuum = new VacuumControl(settings, Notices);
        Faults = new FaultMonitor(Notices, now);
        _lastEnd = now;
        Use(settings);

        // After a boot the rest counts from zero, whatever the relay did before.
        _gate.Restart(now, settings.RestartGapMilliseconds * 1000L);
    }

    /// <summary>Gets the scale between amperes and the core's units.</summary>
    public SensorScale Scale
    {
        get { return _scale; }
    }

    /// <summary>Gets a value indicating whether the tool runs.</summary>
    public bool IsToolRunning
    {
        get { return _detector.IsRunning || _isSlow; }
    }

    /// <summary>Gets the tool's rms current over the last 200 ms in mA, the noise included.</summary>
    public int Milliamperes
    {
        get { return _scale.FromRms(_meter.Rms); }
    }

    /// <summary>Gets the mean of the line over the last 200 ms in mV.</summary>
    public int MeanMillivolts
    {
        get { return _scale.ToMillivolts(_meter.Mean); }
    }

    /// <summary>Gets the swing in sixteenths of a count.</summary>
    public int Swing
    {
        get { return _window.Swing; }
    }

    /// <summary>Gets the swing as the rms current of a sine, in mA.</summary>
    public int SwingMilliamperes
    {
        get { return _scale.FromSwing(_window.Swing); }
    }

    /// <summary>Gets the current at which a tool is taken as running now, in mA: the setting, or more on a noisy line.</summary>
    public int StartMilliamperes
    {
        get { return _scale.FromSwing(_startLevel < _slowStartLevel ? _startLevel : _slowStartLevel); }
    }

    /// <summary>Gets the current below which it is taken as stopped now, in mA.</summary>
    public int StopMilliamperes
    {
        get { return _scale.FromSwing(_stopLevel < _slowStopLevel ? _stopLevel : _slowStopLevel); }
    }

    /// <summary>Gets the noise floor as the rms current of a sine, in mA.</summary>
    public int NoiseMilliamperes
    {
        get { return _scale.FromSwing(_floor.Floor); }
    }

    /// <summary>Gets the resting point of the sensor in mV; 0 until it is known.</summary>
    public int MidpointMillivolts
    {
        get { return _scale.ToMillivolts(_midpoint.Level); }
    }

    /// <summary>Gets a value indicating whether the swing can be believed.</summary>
    public bool IsWindowValid
    {
        get { return _window.IsValid; }
    }

    /// <summary>Gets the vacuum's own rms current in mA; -1 where no sensor is fitted to its line, or it is not known.</summary>
    public int VacuumMilliamperes
    {
        get { return _vacuumLine.Swing < 0 ? -1 : _vacuumScale.FromPeakToPeak(_vacuumLine.Swing); }
    }

    /// <summary>Takes new settings.</summary>
    /// <param name="settings">The settings; the core keeps them and they must not change afterwards.</param>
    public void Use(CoreSettings settings)
    {
        bool sameSensor = _scale != null && settings.MicrovoltsAnAmpere == _settings.MicrovoltsAnAmpere
            && settings.Turns == _settings.Turns && settings.NoiseMilliamperes == _settings.NoiseMilliamperes;
        _settings = settings;
        _scale = new SensorScale(settings.MicrovoltsAnAmpere, settings.Turns, _converter.MicrovoltsACount);
        _vacuumScale = new SensorScale(settings.MicrovoltsAnAmpere, settings.VacuumTurns, _converter.MicrovoltsACount);
        if (settings.VacuumTurns == 0)
        {
            _vacuumLine.Void();
        }


        // What was learned stays, unless it was learned in other units.
        _floor.Set(
            sameSensor ? _floor.Floor : _scale.ToSwing(settings.NoiseMilliamperes),
            Above(_scale.ToSwing(settings.NoiseMilliamperes), CapOverNoisePercent, _scale.ToSwing(settings.StartAtMilliamperes)));
        _slowFloor.Set(
            sameSensor ? _slowFloor.Floor : _scale.ToSwing(settings.NoiseMilliamperes) / SlowShareOfNoise,
            _scale.ToSwing(settings.StartAtMilliamperes));
        SetLevels();
        _gate.SetRest(settings.RestartGapMilliseconds * 1000L);
        Vacuum.Use(settings);
    }

    /// <summary>Takes the next bucket and decides.</summary>
    /// <param name="bucket">The bucket; missing ones are seen from the time between two.</param>
    /// <returns>False when its time is not after the last one's: the clock cannot be trusted, and the vacuum goes off.</returns>
    /// <remarks>
    /// A call costs the device about thirty instructions, so parts that have nothing to do are passed by: what is asked here are
    /// their own public facts.
    /// </remarks>
    public bool Accept(Bucket bucket)
    {
        long now = bucket.EndTime;
        long step = now - _lastEnd;
        if (step != Bucket.Microseconds && !Bridge(step))
        {
            return false;
        }

        _lastEnd = now;
        int count = bucket.Count;
        _window.Add(bucket.Sum, count);
        if (count > 0 && _meter.Add(bucket.Sum * SensorScale.PartsACount / count))
        {
            JudgeMeasurement(now);
        }

        if (_settings.VacuumTurns > 0)
        {
            _vacuumLine.Accept(bucket.VacuumReading);
        }

        bool isValid = _window.IsValid;
        bool isRunning = _detector.IsRunning || _isSlow;
        FaultMonitor faults = Faults;
        if (isValid && bucket.IsOrdinary && faults.IsCalm)
        {
            faults.LastValid = now;
        }
        else
        {
            faults.Accept(bucket, isValid, isRunning);
        }

        if (isValid)
        {
            isRunning = Judge(bucket, now);
        }
        else
        {
            _detector.Skip();
            _slow.Void();
        }

        VacuumControl vacuum = Vacuum;
        if (isRunning != vacuum.IsToolRunning || faults.HoldsOff != vacuum.IsHeldOff || now >= vacuum.NextLook
            || vacuum.State != _judgedState)
        {
            Act(isRunning, now);
        }

        if (vacuum.WantsVacuum != _gate.IsClosed || faults.HoldsOff)
        {
            UpdateGate(now);
        }

        return true;
    }

    /// <summary>Handles what a person asks for.</summary>
    /// <param name="happened">The event.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Handle(VacuumEvent happened, long now)
    {
        Vacuum.Handle(happened, now);
        UpdateGate(now);
    }

    /// <summary>Notes that the relay has dropped because its heartbeat stopped for too long; it rests before it closes again.</summary>
    /// <param name="gapMilliseconds">Length of the gap in ms.</param>
    /// <param name="now">Time in microseconds.</param>
    public void LoseRelay(int gapMilliseconds, long now)
    {
        Notices.Add(NoticeKind.RelayLost, 0, 0, gapMilliseconds, now);
        _gate.Lose(now);
        IsRelayClosed = false;
    }

    /// <summary>Exchanges the whole state with a tape; the settings are not part of it.</summary>
    /// <param name="tape">The tape, begun to be written or read.</param>
    public void Exchange(StateTape tape)
    {
        _window.Exchange(tape);
        _detector.Exchange(tape);
        _floor.Exchange(tape);
        _slow.Exchange(tape);
        _slowFloor.Exchange(tape);
        _meter.Exchange(tape);
        _midpoint.Exchange(tape);
        _vacuumLine.Exchange(tape);
        Vacuum.Exchange(tape);
        Faults.Exchange(tape);
        _gate.Exchange(tape);
        IsRelayClosed = _gate.IsClosed;
        _lastEnd = tape.Number(_lastEnd);
        _idleMeasured = tape.Flag(_idleMeasured);
        _isSlow = tape.Flag(_isSlow);
        _isUnsure = tape.Flag(_isUnsure);
        _isSecondMean = tape.Flag(_isSecondMean);
        _judgedState = (VacuumState)tape.Number((int)_judgedState);
        SetLevels();
    }

    // What came between the last bucket and one that does not follow it at once.
    private bool Bridge(long step)
    {
        if (step <= 0)
        {
            Faults.See(Fault.ClockStands, 0, _lastEnd);
            Vacuum.Update(IsToolRunning, true, _lastEnd);
            UpdateGate(_lastEnd);
            return false;
        }

        if (step > 2 * Bucket.Microseconds)
        {
            _window.Void();
            _meter.Restart();
        }
        else if (step > Bucket.Microseconds)
        {
            // One bucket is missing; the window bridges a single one.
            _window.Add(0, 0);
        }

        return true;
    }

    // Tells from a valid window whether the tool runs.
    private bool Judge(Bucket bucket, long now)
    {
        RunDetector detector = _detector;
        int swing = _window.Swing;
        if (detector.IsRunning ? swing < _stopLevel || detector.Against != 0 : swing >= _startLevel || detector.Against != 0)
        {
            bool wasRunning = detector.IsRunning;
            detector.Accept(swing);
            if (wasRunning && !detector.IsRunning && _isNoiseLimited)
            {
                AskSlowLane();
            }
        }

        if (detector.IsRunning)
        {
            if (_isSlow || Vacuum.IsWaitingForSurge)
            {
                JudgeSurge(bucket, swing, now);
            }

            return detector.IsRunning || _isSlow;
        }

        // By turns, to spare the board: the swing's window and the means' overlap both bridge a bucket.
        _isSecondMean = !_isSecondMean;
        if (_isSecondMean)
        {
            if (swing >= _startLevel && !_isSlow)
            {
                // The fast lane's to judge; a spark's or a surge's first cycle would stay in the slow lane's blocks.
                _slow.Void();
            }
            else if (_slow.Add(_window.Mean))
            {
                JudgeSlowly();
            }
        }
        else if (!_isSlow && _floor.Accept(swing < _startLevel ? swing : _startLevel))
        {
            // Above the level it is a tool that is not confirmed yet, or a burst; as noise it counts up to the level.
            SetLevels();
            Faults.Set(Fault.Noisy, _floor.IsAtCap, _scale.FromSwing(_startLevel), now);
        }

        // What the slow lane finds has gone on for half a second: there is no surge to wait for.
        if (_isSlow && !_isUnsure && Vacuum.IsWaitingForSurge)
        {
            Vacuum.Handle(VacuumEvent.TimeUp, now);
        }

        return _isSlow;
    }

    private void JudgeSurge(Bucket bucket, int swing, long now)
    {
        _isSlow = false;
        if (Vacuum.IsWaitingForSurge && Vacuum.IsBriefSurge(bucket, swing, _floor.Floor, _startLevel))
        {
            _detector.Drop();
            if (_isNoiseLimited)
            {
                AskSlowLane();
            }
        }
    }

    // Noise may have lifted a small tool over the level for a moment: the slow lane decides whether it still runs.
    private void AskSlowLane()
    {
        _isSlow = true;
        _isUnsure = true;
        _slow.Void();
    }

    private void JudgeSlowly()
    {
        int swing = _slow.Swing;
        if (_isSlow)
        {
            // What has only been seen in a surge must show that it is a tool.
            _isSlow = swing >= (_isUnsure && Vacuum.IsWaitingForSurge ? _slowStartLevel : _slowStopLevel);
            _isUnsure = false;
        }
        else if (swing >= _slowStartLevel)
        {
            _isSlow = true;
        }
        else if (_slowFloor.Accept(swing))
        {
            SetLevels();
        }
    }

    // Something has changed, or a time is up.
    private void Act(bool isRunning, long now)
    {
        VacuumControl vacuum = Vacuum;
        if (isRunning != vacuum.IsToolRunning)
        {
            _floor.Restart();
            _slowFloor.Restart();
            if (!_isSlow)
            {
                _slow.Void();
            }

            _idleMeasured = false;
        }

        vacuum.Update(isRunning, Faults.HoldsOff, now);
        if (vacuum.State != _judgedState)
        {
            _judgedState = vacuum.State;
            Faults.Set(Fault.ShortCycling, vacuum.State == VacuumState.RunningOn && vacuum.IsStretched, _settings.StartsAMinute, now);
            Faults.Set(Fault.RanTooLong, vacuum.State == VacuumState.AwaitingStop && vacuum.RanTooLong, _settings.LongestRunMilliseconds / 60000, now);
        }
    }

    private void UpdateGate(long now)
    {
        _gate.Update(Vacuum.WantsVacuum, Faults.HoldsOff, now);
        IsRelayClosed = _gate.IsClosed;
    }

    private void JudgeMeasurement(long now)
    {
        // While a tool runs the mean says nothing: a half-wave tool's current has one of its own. The first measuring after a stop
        // may still hold some of it.
        if (!IsToolRunning)
        {
            if (_idleMeasured)
            {
                Faults.JudgeMidpoint(_scale.ToMillivolts(_meter.Mean), _converter.LeastRestMillivolts, _converter.GreatestRestMillivolts, now);
                _midpoint.Accept(_meter.Mean);
            }

            _idleMeasured = true;
        }
    }

    private static int Above(int floor, int percent, int set)
    {
        int overFloor = floor * percent / 100;
        return set > overFloor ? set : overFloor;
    }

    private void SetLevels()
    {
        int start = _scale.ToSwing(_settings.StartAtMilliamperes);
        int stop = _scale.ToSwing(_settings.StopBelowMilliamperes);
        _startLevel = Above(_floor.Floor, StartOverFloorPercent, start);
        _stopLevel = Above(_floor.Floor, StopOverFloorPercent, stop);
        _isNoiseLimited = _startLevel > start;
        _slowStartLevel = Above(_slowFloor.Floor, SlowStartOverFloorPercent, start);
        _slowStopLevel = Above(_slowFloor.Floor, StopOverFloorPercent, stop);
        _detector.SetLevels(_startLevel, _stopLevel, _settings.ConfirmBuckets);
    }
}
