namespace NanoDustSwitch.Detection;

/// <summary>
/// Decides from the readings whether the tool runs and what the vacuum should do. What it decides depends on the buckets, the
/// events and the settings it is given, and on nothing else: it knows no board, no text and no clock of its own.
/// </summary>
/// <remarks>
/// A bucket goes through the tool finder, the vacuum control and the relay gate, which decide. The current meter, the midpoint,
/// the vacuum's line and the faults look at it as well.
/// </remarks>
public sealed class DetectionCore
{
    /// <summary>
    /// So many lost heartbeats an hour are only counted. A board in order has none; ten more starts are what a motor and a
    /// contact stand in two minutes of ordinary work with the delivered starts-a-minute (common practice, no source).
    /// </summary>
    public const int MostLostAnHour = 10;

    // A mean over 5 ms keeps less of a sine than one over 2.5 ms: sin(x)/x with x = π · frequency · length is 0.900 in place of
    // 0.974 at 50 Hz and 0.858 in place of 0.964 at 60 Hz, which is 92 % and 89 % of it.
    private const int LongBucketsPercent = 91;

    // The meter's turn comes every eight buckets, in one in which the tool finder does least. Long buckets end at even places.
    private const int MeterTurn = 3;

    // The look for a second tool begins four buckets later, and takes three.
    private const int SecondTurn = SwingWindow.Length / 2;

    private readonly ToolFinder _tool = new ToolFinder();
    private readonly CurrentMeter _meter = new CurrentMeter();
    private readonly Midpoint _midpoint = new Midpoint();
    private readonly VacuumLine _vacuumLine = new VacuumLine();
    private readonly VacuumWatch _vacuumWatch;
    private readonly FeedbackWatch _feedback;
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

    /// <summary>What lets the relay close.</summary>
    public readonly RelayGate Gate = new RelayGate();

    /// <summary>
    /// The heartbeats that were lost: each time the relay may have dropped under load, and closes once more on a motor.
    /// </summary>
    public readonly StartCounter LostHeartbeats = new StartCounter(MostLostAnHour + 1, Time.Hour);

    /// <summary>Whether the buckets are long ones, of <see cref="Bucket.LongMicroseconds"/>.</summary>
    public bool HasLongBuckets;

    private long _lastEnd;
    private long _surgeDue;
    private int _meterTurn = MeterTurn;
    private bool _hasVacuumLine;
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
        _vacuumWatch = new VacuumWatch(now);
        _feedback = new FeedbackWatch(Notices);
        _lastEnd = now;
        Use(settings);

        // Nobody knows when the relay opened before the boot, so its rest starts now.
        Gate.NoteOpening(now);
    }

    /// <summary>Gets the scale between amperes and the core's units.</summary>
    public SensorScale Scale
    {
        get { return _scale; }
    }

    /// <summary>Gets a value indicating whether the tool runs.</summary>
    public bool IsToolRunning
    {
        get { return _tool.IsRunning; }
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
        get { return _tool.Window.Swing; }
    }

    /// <summary>
    /// Gets the greatest swing of the last eight buckets, which is what reaches the levels, as the rms current of a sine, in mA.
    /// </summary>
    public int SwingMilliamperes
    {
        get { return _scale.FromSwing(SwingWindow.SwingOf(_tool.Window.GreatestPower(), _tool.Window.Swing)); }
    }

    /// <summary>Gets the slow lane's latest answer as a swing, in sixteenths of a count.</summary>
    public int SlowSwing
    {
        get { return _tool.Slow.Swing; }
    }

    /// <summary>Gets how many answers the slow lane has given; it is there to see that a new one has come.</summary>
    public int SlowAnswers
    {
        get { return _tool.Slow.Answers; }
    }

    /// <summary>Gets the current at which a tool is taken as running now, in mA: the setting, or more on a noisy line.</summary>
    public int StartMilliamperes
    {
        get { return _scale.FromSwing(_tool.Levels.LeastStart); }
    }

    /// <summary>
    /// Gets the current below which a tool is taken as stopped now, in mA: the setting, or more on a noisy line.
    /// </summary>
    public int StopMilliamperes
    {
        get { return _scale.FromSwing(_tool.Levels.LeastStop); }
    }

    /// <summary>Gets the steady current that stands on the line without a tool, in mA; 0 where there is none.</summary>
    public int StandingMilliamperes
    {
        get { return _scale.FromSwing(_tool.Standing.Steady); }
    }

    /// <summary>Gets the noise floor as the rms current of a sine, in mA.</summary>
    public int NoiseMilliamperes
    {
        get { return _scale.FromSwing(_tool.Floor); }
    }

    /// <summary>Gets the resting point of the sensor in mV; 0 until it is known.</summary>
    public int MidpointMillivolts
    {
        get { return _scale.ToMillivolts(_midpoint.Level); }
    }

    /// <summary>Gets a value indicating whether the swing can be believed.</summary>
    public bool IsWindowValid
    {
        get { return _tool.Window.IsValid; }
    }

    /// <summary>Gets the vacuum's own rms current in mA; -1 where no sensor is fitted to its line, or it is not known.</summary>
    public int VacuumMilliamperes
    {
        get { return _vacuumLine.Swing < 0 ? -1 : _vacuumScale.FromPeakToPeak(_vacuumLine.Swing); }
    }

    /// <summary>
    /// Gets a value indicating whether the vacuum runs: by its current where its line has a sensor, else by the relay.
    /// </summary>
    public bool IsVacuumRunning
    {
        get { return _hasVacuumLine && _vacuumLine.Swing >= 0 ? _vacuumWatch.IsRunning : IsRelayClosed; }
    }

    /// <summary>
    /// Gets a value indicating whether a sensor on the vacuum's line shows that it draws nothing. Without it, or while its
    /// current is not known, the relay can be told to open, and nobody knows whether the contact did.
    /// </summary>
    public bool IsVacuumSeenOff
    {
        get
        {
            int milliamperes = VacuumMilliamperes;
            return _hasVacuumLine && !_vacuumWatch.IsRunning
                && milliamperes >= 0 && milliamperes < VacuumWatch.LeastMilliamperes;
        }
    }

    /// <summary>
    /// Gets a value indicating whether the relay is kept open for a moment, to see whether the current goes with it.
    /// </summary>
    public bool IsProbing
    {
        get { return _feedback.IsProbing; }
    }

    /// <summary>Gets a value indicating whether the relay should be closed now.</summary>
    public bool IsRelayClosed
    {
        get { return Gate.IsClosed; }
    }

    /// <summary>Gets a value indicating whether the relay is open and nothing is about to close it.</summary>
    public bool IsRelayResting
    {
        get { return !IsRelayClosed && !Vacuum.WantsVacuum && Vacuum.State != VacuumState.Starting; }
    }

    /// <summary>Gets a value indicating whether tool and vacuum are off, so that flash may be written.</summary>
    public bool IsQuiet
    {
        get { return !IsToolRunning && IsRelayResting; }
    }

    /// <summary>
    /// From the next bucket on they are long ones, because the board is too slow for others. Each then counts as two of the
    /// ordinary length with the same readings.
    /// </summary>
    public void UseLongBuckets()
    {
        HasLongBuckets = true;
        _tool.Window.Reset();
        _meter.Reset();
        Use(_settings);
    }

    /// <summary>Takes new settings.</summary>
    /// <param name="settings">The settings; the core keeps them and they must not change afterwards.</param>
    public void Use(CoreSettings settings)
    {
        bool sameSensor = _scale != null && settings.MicrovoltsAnAmpere == _settings.MicrovoltsAnAmpere
            && settings.Turns == _settings.Turns && settings.NoiseMilliamperes == _settings.NoiseMilliamperes;
        if (!sameSensor)
        {
            // Another scale shows the same tools with other swings.
            Vacuum.Book.Forget();
        }

        _settings = settings;
        _meterTurn = HasLongBuckets ? 0 : MeterTurn;
        int microvolts = HasLongBuckets ? settings.MicrovoltsAnAmpere / 100 * LongBucketsPercent : settings.MicrovoltsAnAmpere;
        _scale = new SensorScale(microvolts, settings.Turns, _converter.MicrovoltsACount);
        _vacuumScale = new SensorScale(settings.MicrovoltsAnAmpere, settings.VacuumTurns, _converter.MicrovoltsACount);
        _hasVacuumLine = settings.VacuumTurns > 0;
        if (!_hasVacuumLine)
        {
            _vacuumLine.Reset();
            _vacuumWatch.ForgetCurrent();
            Faults.IsVacuumStuck = false;
            Faults.End(Fault.VacuumIdle, _lastEnd);
        }

        _tool.Use(
            _scale.ToSwing(settings.StartAtMilliamperes),
            _scale.ToSwing(settings.StopBelowMilliamperes),
            _scale.ToSwing(settings.NoiseMilliamperes),
            settings.ConfirmBuckets,
            sameSensor);
        Gate.SetRest(settings.RestartGapMilliseconds * Time.Millisecond);

        // The sensor may be an eighth off.
        Vacuum.Surge.Circuit = _scale.ToSwing(settings.CircuitMilliamperes / 8 * 9);
        Vacuum.Use(settings);
    }

    /// <summary>Takes the next bucket and decides.</summary>
    /// <param name="bucket">The bucket; missing ones are seen from the time between two.</param>
    /// <returns>False when its time is not after the last one's: the clock cannot be trusted, and the vacuum goes off.</returns>
    /// <remarks>
    /// A call costs the device five to ten plain instructions more than what it does, so a part is called only if it has
    /// something to do, which its public fields tell.
    /// </remarks>
    public bool Accept(Bucket bucket)
    {
        long now = bucket.EndTime;
        long step = now - _lastEnd;
        if (step != Bucket.Microseconds && !HandleStep(bucket, step))
        {
            return false;
        }

        _lastEnd = now;
        ToolFinder tool = _tool;
        SwingWindow window = tool.Window;
        bool hasNews = tool.Accept(bucket);
        bool isValid = window.IsValid;
        int turn = window.Place & (SwingWindow.Length - 1);
        if (turn == _meterTurn && window.IsFull && _meter.Add(window))
        {
            JudgeMeasurement(now);
        }

        if (_hasVacuumLine && _vacuumLine.Accept(bucket.VacuumReading))
        {
            _vacuumWatch.Accept(VacuumMilliamperes, Gate.IsClosed, Faults, now);
        }

        FaultMonitor faults = Faults;
        if (isValid && bucket.IsOrdinary && faults.IsCalm)
        {
            faults.LastValid = now;
        }
        else
        {
            faults.Accept(bucket, isValid, tool.IsRunning);
            Vacuum.Surge.Clipped += bucket.AtLowRail + bucket.AtHighRail;
        }

        VacuumControl vacuum = Vacuum;
        if (now >= vacuum.Surge.NextLook)
        {
            if (vacuum.Surge.HasMore)
            {
                Attend(bucket);
            }
            else
            {
                LookAtSurge(bucket);
            }
        }
        else if (hasNews)
        {
            if (tool.IsRunning)
            {
                NoteRise(now);
            }
            else
            {
                JudgeNoise(now);
            }
        }

        bool isRunning = tool.IsRunning;
        if (isRunning != vacuum.IsToolRunning || faults.HoldsOff != vacuum.IsHeldOff || now >= vacuum.NextLook)
        {
            Act(isRunning, now);
        }

        if (vacuum.WantsVacuum != Gate.IsClosed || faults.HoldsOff)
        {
            UpdateGate(now);
        }

        if (_feedback.IsWatching && (turn == 0 || _feedback.WantsEveryBucket))
        {
            WatchFeedback(now);
        }

        return true;
    }

    /// <summary>Handles what a person asks for.</summary>
    /// <param name="happened">The event.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Handle(VacuumEvent happened, long now)
    {
        Vacuum.Handle(happened, now);
        JudgeState(now);
        UpdateGate(now);
    }

    /// <summary>
    /// Notes that the relay may have dropped because its heartbeat stopped for too long; it rests before it closes again. Too
    /// many of them in an hour are a fault.
    /// </summary>
    /// <param name="gapMilliseconds">Length of the gap in ms.</param>
    /// <param name="now">Time in microseconds.</param>
    public void LoseRelay(int gapMilliseconds, long now)
    {
        LostHeartbeats.Add(now);
        int lost = LostHeartbeats.Recent(now);
        Notices.Add(NoticeKind.RelayLost, lost, 0, gapMilliseconds, now);
        if (lost > MostLostAnHour)
        {
            Faults.See(Fault.HeartbeatLost, gapMilliseconds, now);
        }

        Gate.NoteOpening(now);
        NoteRelay(now);
    }

    /// <summary>Exchanges the whole state with a tape; the settings are not part of it.</summary>
    /// <param name="tape">The tape, begun to be written or read.</param>
    public void Exchange(StateTape tape)
    {
        // First, because the levels follow from it.
        bool isLong = tape.Flag(HasLongBuckets);
        if (isLong != HasLongBuckets)
        {
            HasLongBuckets = isLong;
            Use(_settings);
        }

        _tool.Exchange(tape);
        _meter.Exchange(tape);
        _midpoint.Exchange(tape);
        _vacuumLine.Exchange(tape);
        _vacuumWatch.Exchange(tape);
        _feedback.Exchange(tape);
        Vacuum.Exchange(tape);
        Faults.Exchange(tape);
        Gate.Exchange(tape);
        LostHeartbeats.Exchange(tape);
        _lastEnd = tape.Number(_lastEnd);
        _surgeDue = tape.Number(_surgeDue);
        _idleMeasured = tape.Flag(_idleMeasured);
        _judgedState = (VacuumState)tape.Number((int)_judgedState);
    }

    // The bucket does not follow the last one at once, or it is a long one, or the clock does not go on.
    private bool HandleStep(Bucket bucket, long step)
    {
        if (step <= 0)
        {
            Faults.See(Fault.ClockStands, 0, _lastEnd);
            Vacuum.Update(IsToolRunning, true, _lastEnd);
            UpdateGate(_lastEnd);
            return false;
        }

        if (step > Bucket.LongMicroseconds)
        {
            _tool.Window.Reset();
            _meter.Reset();
            Gate.NoteGap(_lastEnd, _lastEnd + step);
        }

        if (HasLongBuckets)
        {
            if (_tool.AcceptFirstHalf(bucket))
            {
                JudgeNoise(bucket.EndTime);
            }
        }
        else if (step > Bucket.Microseconds && step <= Bucket.LongMicroseconds)
        {
            // One bucket is missing. The window takes a single empty one to be like the one before it.
            _tool.Window.Add(0, 0);
        }

        return true;
    }

    private void JudgeNoise(long now)
    {
        Faults.Set(Fault.Noisy, _tool.IsAtCap, _scale.FromSwing(_tool.Levels.Start), now);
    }

    private void LookAtSurge(Bucket bucket)
    {
        ToolFinder tool = _tool;
        VacuumControl vacuum = Vacuum;
        if (!tool.Window.IsValid)
        {
            return;
        }

        if (!tool.IsSlow)
        {
            if (tool.IsRunning && vacuum.IsBriefSurge(bucket, tool.Window, tool.Floor, tool.Levels))
            {
                tool.RejectStart();
            }
        }
        else if (!vacuum.IsWaitingForSurge)
        {
            vacuum.Surge.End(false);
        }
        else if (tool.IsUnsure)
        {
            tool.MustReachStart = true;
        }
        else
        {
            // What the slow lane finds has run for about half a second, so its start surge is over.
            vacuum.Handle(VacuumEvent.TimeUp, bucket.EndTime);
        }

        if (vacuum.State != _judgedState)
        {
            JudgeState(bucket.EndTime);
        }
    }

    // Which tool is it, or what is to be learned of it? The book is asked between the looks at the surge, so that no bucket has
    // both to do, for one place at a bucket.
    private void Attend(Bucket bucket)
    {
        VacuumControl vacuum = Vacuum;
        if (vacuum.Second.IsFollowing)
        {
            FollowSecond(bucket);
            return;
        }

        ToolGuess guess = vacuum.Guess;
        SurgeWatch surge = vacuum.Surge;

        if (guess.IsAsking && (surge.IsEnding || bucket.EndTime < _surgeDue))
        {
            AskOn(bucket.EndTime);
        }
        else if (surge.IsEnding)
        {
            Learn(bucket.EndTime);
        }
        else
        {
            if (guess.IsAsking)
            {
                surge.NextLook = _surgeDue;
            }
            else if (surge.IsNews)
            {
                surge.IsNews = false;
                if (!vacuum.Ignored.IsThere && surge.Seen.Level < int.MaxValue)
                {
                    guess.Ask(false);
                }
            }

            LookAtSurge(bucket);
            if (guess.IsAsking)
            {
                _surgeDue = surge.NextLook;
                surge.NextLook = 0;
            }
        }

        surge.HasMore = surge.IsEnding || surge.IsNews || guess.IsAsking || vacuum.Second.IsFollowing;
    }

    private void NoteRise(long now)
    {
        _tool.RisePower = int.MaxValue;
        if (Vacuum.Second.IsFollowing)
        {
            Vacuum.Second.BeginStart(now);
            Vacuum.BeginSecond(now);
            Vacuum.Surge.HasMore = true;
        }
    }

    // A tool runs and is known as well as it will be. Does another one start beside it, or has one of two stopped?
    private void FollowSecond(Bucket bucket)
    {
        VacuumControl vacuum = Vacuum;
        SecondTool second = vacuum.Second;
        SurgeWatch surge = vacuum.Surge;
        ToolFinder tool = _tool;
        SwingWindow window = tool.Window;
        if (tool.IsSlow || !window.IsFull)
        {
            second.End(bucket.EndTime);
            tool.RisePower = int.MaxValue;
            surge.End(false);
            surge.HasMore = false;
            return;
        }

        if (!second.IsStarting)
        {
            second.Step(window, bucket.EndTime);
            surge.NextLook = second.NextLook;
            tool.RisePower = second.RisePower;
            return;
        }

        if (surge.IsEnding)
        {
            second.EndStart();
            surge.IsEnding = false;
            surge.NextLook = 0;
        }
        else
        {
            LookAtSurge(bucket);
            if (!surge.IsWatching)
            {
                second.IsStarting = false;
                surge.NextLook = 0;
            }
        }

        surge.HasMore = true;
    }

    private void AskOn(long now)
    {
        VacuumControl vacuum = Vacuum;
        ToolGuess guess = vacuum.Guess;
        if (guess.Step(vacuum.Surge.Seen) && guess.NeedsNone && vacuum.IsToolRunning && !vacuum.Ignored.IsThere)
        {
            vacuum.Ignore(_tool.Window);
            Act(_tool.IsRunning, now);
        }

        if (!guess.IsAsking)
        {
            vacuum.Surge.NextLook = _surgeDue;
        }
    }

    // The start is over.
    private void Learn(long now)
    {
        VacuumControl vacuum = Vacuum;
        if (vacuum.Guess.Learned != ToolGuess.None || vacuum.Guess.TeachesNothing
            || (vacuum.Ignored.IsThere && !vacuum.Ignored.IsAlone))
        {
            // Two loads together teach nothing of either.
            vacuum.Surge.End(false);
            if (vacuum.State == VacuumState.On && !HasLongBuckets && !vacuum.Ignored.IsThere && _tool.Window.IsFull
                && vacuum.Book.HasTwo())
            {
                int left = SwingWindow.Length - ((_tool.Window.Place + SecondTurn) & (SwingWindow.Length - 1));
                vacuum.Second.Begin(vacuum.Surge.Seen.Third, now + (left * Bucket.Microseconds));
                vacuum.Surge.NextLook = vacuum.Second.NextLook;
                vacuum.Surge.HasMore = true;
            }
        }
        else
        {
            vacuum.Guess.Ask(true);
            _surgeDue = 0;
        }
    }

    // A fact has changed since the last bucket, or a time is up.
    private void Act(bool isRunning, long now)
    {
        VacuumControl vacuum = Vacuum;
        if (vacuum.Ignored.IsThere)
        {
            isRunning = vacuum.FollowIgnored(_tool.Window, isRunning, _tool.Levels.LeastStart, now);
        }

        if (isRunning != vacuum.IsToolRunning)
        {
            _tool.ResetLearning();
            _idleMeasured = false;
        }

        if (!isRunning && vacuum.IsToolRunning && !vacuum.Ignored.IsAlone)
        {
            vacuum.Guess.Stop(now);
        }

        vacuum.Update(isRunning, Faults.HoldsOff, now);
        if (_tool.IsSlow && vacuum.Surge.IsWatching)
        {
            vacuum.Surge.NextLook = now;
        }

        JudgeState(now);
    }

    private void JudgeState(long now)
    {
        VacuumControl vacuum = Vacuum;
        if (vacuum.State != _judgedState)
        {
            _judgedState = vacuum.State;
            _tool.IsOnTrial = vacuum.IsWaitingForSurge;
            bool isCycling = vacuum.State == VacuumState.RunOn && vacuum.IsStretched;
            bool ranTooLong = vacuum.State == VacuumState.UntilStop && vacuum.RanTooLong;
            int longestMinutes = _settings.LongestRunMilliseconds / (int)(Time.Minute / Time.Millisecond);
            Faults.Set(Fault.ShortCycling, isCycling, _settings.StartsAMinute, now);
            Faults.Set(Fault.RanTooLong, ranTooLong, longestMinutes, now);
        }
    }

    private void UpdateGate(long now)
    {
        bool wasClosed = Gate.IsClosed;
        Gate.Update(Vacuum.WantsVacuum && !_feedback.IsProbing, Faults.HoldsOff, now);
        if (Gate.IsClosed != wasClosed)
        {
            NoteRelay(now);
        }
    }

    private void NoteRelay(long now)
    {
        _vacuumWatch.NoteRelay(now);
        if (!Gate.IsClosed)
        {
            _feedback.NoteOpening(IsToolRunning, now);
        }
        else if (!HasLongBuckets)
        {
            // A slow board may take seconds to see that a tool has stopped, and a look would start the vacuum anew.
            _feedback.NoteClosing(_tool.Window, _tool.Levels.LeastStop, now);
        }
    }

    private void WatchFeedback(long now)
    {
        if (_feedback.Accept(_tool.Window, now))
        {
            Faults.See(Fault.OwnCurrent, _scale.FromSwing(_feedback.Level), now);
            _feedback.Reset();
        }

        if (_feedback.IsProbing && IsRelayClosed)
        {
            UpdateGate(now);
        }
    }

    private void JudgeMeasurement(long now)
    {
        // While a tool runs the mean is not the resting point: a half-wave tool draws a direct current beside the alternating
        // one. The first measuring window after a stop may still hold some of that, so it is left out.
        if (!IsToolRunning)
        {
            if (_idleMeasured)
            {
                ConverterScale band = _converter;
                Faults.JudgeMidpoint(MeanMillivolts, band.LeastRestMillivolts, band.GreatestRestMillivolts, now);
                _midpoint.Accept(_meter.Mean);
            }

            _idleMeasured = true;
        }
    }
}
