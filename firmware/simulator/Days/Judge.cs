using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Compares what the switch did with the true current, which it knows from the shop and not from the sensor.</summary>
/// <remarks>
/// Missed: current at or above start-at for the start delay and three cycles more, and no command within the start delay and
/// two cycles. With the delay <em>after the start surge</em> only currents of more than 15 cycles count, and the end of the
/// surge, by its rule on the true current, is the delay; the switch looks for that end every 20 ms, once its window is full,
/// and may see a fall by chance in one look: that counts too. Narrow pulses fall between its readings now more, now less: of
/// them it may wait for the end of the longest surge. With a start-at within the stored noise of a cycle half a second more,
/// for the slow lane. False: a command without such current, which the rms of a cycle shows within another one. The
/// detector's levels are good to 8 %, and hum and noise add to what it sees: a current from 90 % of start-at on, less the hum
/// and a quarter of the noise, is no false start. A vacuum that goes off while the tool runs and does not come back counts as
/// missed, a relay that rests too short as false. A start is excused where a person, or a fault that the shop explains, holds
/// the vacuum off, or where all that runs needs no vacuum by what a person has told the box; a command is false there. In the
/// surge: a command that waited for the end of the surge, while the true rms of a cycle is above one and a half times what the
/// tools come to. All is judged by the settings in force at the moment.
/// </remarks>
/// <param name="shop">The shop.</param>
/// <param name="person">The person at work in it.</param>
/// <param name="timeline">Where verdicts are written.</param>
/// <param name="isSlow">Whether the board is too slow for ordinary buckets.</param>
internal sealed class Judge(VirtualShop shop, Person person, List<Entry> timeline, bool isSlow = false)
{
    private const long SurgeDistance = 200_000;

    // A current that never came down is looked at for so long, and then until 0.4 s of it are steady.
    private const long SurgeLook =
        (SurgeWatch.LeftOut + ((SurgeWatch.StretchesToBelieve + (2 * SurgeWatch.Half)) * SwingWindow.Length))
        * (long)Bucket.Microseconds;
    private const long SlowLaneTime = 500_000;

    // From the last wild reading to the command that it made.
    private const long WildTail = 1_000_000;
    private const double CircuitShare = 0.85;
    private const double FallAllowed = 0.99;

    // A sine swings by 2.8 of its rms. Pulses of more than four beat with the readings and seem to fall for seconds.
    private const double NarrowSwing = 4;
    private const double FalseBelow = 0.9;
    private const double LeastFalseBelow = 0.5;
    private const double NoiseShare = 0.25;

    private readonly RelayJudge _relay = new(shop);
    private readonly StayJudge _stay = new(shop);
    private readonly FaultJudge _faults = new(shop, person, isSlow);
    private readonly HandWatch _hand = new(person);
    private readonly double _cycle = 1e6 / shop.Mains.Hertz;
    private readonly SwingHistory _history = new();
    private double _startAt;
    private double _circuit;
    private int _startDelay;
    private long _patience;
    private bool _isOffByHand;
    private bool _wasLooking;
    private VacuumState _state;
    private bool _isIn;
    private bool _neededNone;
    private bool _isServed;
    private bool _isDecided;
    private bool _wasExcused;
    private long _onset;
    private long _delayEnd;
    private long _commandedAt;
    private long _openedAt = long.MinValue / 2;
    private long _lastAbove = long.MinValue / 2;
    private long _upSince;
    private bool _wasCommanded;
    private long _doubtedAt;
    private long _wildAt = long.MinValue / 2;
    private long _collected;
    private long _collectedAtLastLook;
    private long _collectedBefore;

    /// <summary>Gets the starts that were asked for by a current and made.</summary>
    public int Starts { get; private set; }

    /// <summary>Gets the starts that were asked for and not made, or made too late.</summary>
    public int Missed { get; private set; }

    /// <summary>Gets the starts that no current asked for.</summary>
    public int False { get; private set; }

    /// <summary>Gets the starts that were made inside the tool's start surge.</summary>
    public int InSurge { get; private set; }

    /// <summary>Gets how often the vacuum would not stop.</summary>
    public int Stayed { get; private set; }

    /// <summary>Gets the faults that nothing in the day explains.</summary>
    public int Unexpected { get; private set; }

    /// <summary>Gets how often the relay was opened for a look, whether the current is the vacuum's.</summary>
    public int Looks { get; private set; }

    /// <summary>Gets the starts that no current asked for while there were wild readings.</summary>
    public int Wild { get; private set; }

    /// <summary>Gets how often there were wild readings.</summary>
    public int WildTimes { get; private set; }

    /// <summary>Gets all that was counted.</summary>
    public DayCounts Counts => new(Starts, Missed, False, InSurge, Stayed, Unexpected, Looks, Wild, WildTimes);

    /// <summary>
    /// Gets the times from the onset of the current to the command, in milliseconds, of the starts with the vacuum off.
    /// </summary>
    public List<double> Delays { get; } = [];

    /// <summary>Looks at the shop and the switch after a step.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <param name="core">The core.</param>
    /// <param name="settings">The settings in force.</param>
    /// <param name="collected">Time of all garbage collections of the board so far, in microseconds.</param>
    public void Look(long now, DetectionCore core, SettingValues settings, long collected)
    {
        Use(settings);
        _collected = collected;
        LookAtFaults(now, core, settings, collected);
        _isOffByHand = _hand.IsOffByHand(now, core.Vacuum, _faults.RanTooLong);
        double rms = shop.ToolLine.Rms;
        double swing = shop.ToolLine.PeakToPeak;
        double added = shop.Sensor.HumAmperes + (NoiseShare * shop.Sensor.NoiseAmperes);
        if (rms >= Math.Max(LeastFalseBelow * _startAt, (FalseBelow * _startAt) - added))
        {
            _lastAbove = now;
        }

        if (shop.Sensor.Wild != null)
        {
            WildTimes += now - _wildAt > WildTail ? 1 : 0;
            _wildAt = now;
        }

        LookAtCommand(now, core);
        LookAtCurrent(now, rms, swing, core);
        LookAtRelay(now);
        if (_stay.Look(now, core, settings) is { } stayed)
        {
            Stayed++;
            Tell(now, stayed);
        }

        Looks += core.IsProbing && !_wasLooking ? 1 : 0;
        _wasLooking = core.IsProbing;
        _state = core.Vacuum.State;
        _history.Add(now, swing);
        _collectedAtLastLook = collected;
    }

    /// <summary>
    /// The box has no power, or its firmware has just come up and knows nothing of what was before: nothing is asked of it, and
    /// its restart gap begins.
    /// </summary>
    /// <param name="now">Shop time in microseconds.</param>
    public void Reset(long now)
    {
        _upSince = now;
        _openedAt = now;
        _wasCommanded = false;
        _doubtedAt = 0;
        _isIn = false;
        _state = VacuumState.Idle;
        _stay.Reset(now);
        _faults.Reset();
    }

    private void Use(SettingValues settings)
    {
        _startAt = settings[SettingId.StartAt] / 1000.0;
        _circuit = settings[SettingId.Circuit] / 8 * 9 / 1000.0;
        _startDelay = settings[SettingId.StartDelay];
        _patience = settings[SettingId.StartAt] * 100 < settings[SettingId.Noise] * ToolLevels.StartPercent ? SlowLaneTime : 0;
        _relay.Use(settings);
    }

    private void LookAtFaults(long now, DetectionCore core, SettingValues settings, long collected)
    {
        foreach (Fault fault in _faults.Look(now, core, settings, collected))
        {
            Unexpected++;
            Tell(now, $"UNEXPECTED fault: {FaultText.Name(fault)}");
        }
    }

    // A start of its own, and not the relay that closes again after a look or a lost heartbeat.
    private void LookAtSurge(long now)
    {
        double settled = shop.Wiring.SettledOnToolLine;
        if (_startDelay == CoreSettings.AfterSurge && (_state is VacuumState.Idle or VacuumState.Starting) && settled > 0
            && SurgeTruth.IsInside(shop.ToolLine.Rms, settled))
        {
            InSurge++;
            Tell(now, $"IN THE SURGE: {shop.ToolLine.Rms:0.0} A, which comes to {settled:0.0} A");
        }
    }

    private void LookAtCommand(long now, DetectionCore core)
    {
        bool isCommanded = core.IsRelayClosed;
        if (isCommanded && !_wasCommanded)
        {
            _commandedAt = now;
            LookAtSurge(now);
            bool isOwnDoing = core.Vacuum.State != VacuumState.ByHand;

            // A relay that was lost in a run-on, or opened for a look, goes on with it.
            bool isBack = core.Vacuum.State == VacuumState.RunOn && now - _openedAt <= _relay.Rest + SlowLaneTime;
            if (isOwnDoing && !isBack && shop.Wiring.NeedsNoVacuum(FalseBelow * _startAt))
            {
                False++;
                Tell(now, $"FALSE start: nothing runs that needs the vacuum, only {shop.ToolLine.Rms:0.00} A that need none");
            }

            if (isOwnDoing && !isBack && now - _lastAbove > 5 * _cycle)
            {
                // The switch may be faster than the rms of a cycle is.
                _doubtedAt = now;
            }
        }
        else if (!isCommanded && _wasCommanded)
        {
            _openedAt = now;
        }

        _wasCommanded = isCommanded;
        if (_doubtedAt > 0 && _lastAbove >= _doubtedAt)
        {
            _doubtedAt = 0;
        }
        else if (_doubtedAt > 0 && now - _doubtedAt > _cycle)
        {
            bool isWild = now - _wildAt <= WildTail;
            Wild += isWild ? 1 : 0;
            False += isWild ? 0 : 1;
            Tell(now, $"{(isWild ? "WILD" : "FALSE")} start: the true current was {shop.ToolLine.Rms:0.00} A");
            _doubtedAt = 0;
        }
    }

    private void LookAtRelay(long now)
    {
        if (_relay.LookAtCoil(now) is { } soon)
        {
            False++;
            Tell(now, $"FALSE: {soon}");
        }

        if (_relay.LookForReturn(now, _isIn && _isServed && !_wasExcused && !_wasCommanded) is { } gone)
        {
            Missed++;
            Tell(now, $"MISSED: {gone}");
        }
    }

    private void LookAtCurrent(long now, double rms, double swing, DetectionCore core)
    {
        bool isAbove = rms >= _startAt;
        bool needsNone = shop.Wiring.NeedsNoVacuum(FalseBelow * _startAt);
        if (_neededNone && !needsNone)
        {
            // What starts beside such a load is judged by itself.
            _isIn = false;
        }

        _neededNone = needsNone;
        if (!_isIn && isAbove)
        {
            Begin(now);
        }

        if (!_isIn)
        {
            return;
        }

        if (_startDelay == CoreSettings.AfterSurge && !_isServed && !_isDecided && person.LastToolChange > _onset)
        {
            // A second tool has started while the first one's surge was waited for: now its surge is.
            _onset = person.LastToolChange;
            _delayEnd = 0;
        }

        _wasExcused = _wasExcused
            || person.HasSwitchBlind
            || needsNone
            || _isOffByHand
            || _faults.HoldsRightly(core.Faults);
        if (_delayEnd == 0 && IsSurgeOver(now, rms, swing))
        {
            _delayEnd = now;
        }

        if (_wasCommanded && !_isServed)
        {
            _isServed = true;
            if (_commandedAt >= _onset && !_wasExcused)
            {
                Delays.Add((_commandedAt - _onset) / 1000.0);
            }
        }

        if (!_isDecided && _delayEnd != 0)
        {
            Decide(now, rms, swing, core);
        }

        if (!isAbove)
        {
            _isIn = false;
        }
    }

    private void Begin(long now)
    {
        _isIn = true;
        _isServed = false;
        _isDecided = false;
        _wasExcused = false;

        // The meter looks back over a cycle, so the current began with the person's last act, if that was just now.
        _onset = Math.Max(_upSince, Math.Max(person.LastToolChange, now - (long)_cycle));
        _delayEnd = _startDelay == CoreSettings.AfterSurge ? 0 : _onset + (_startDelay * 1000L);
        _collectedBefore = _collectedAtLastLook;
    }

    private bool IsSurgeOver(long now, double rms, double swing)
    {
        long since = now - _onset;
        if (since >= CoreSettings.LongestSurgeMilliseconds * 1000L)
        {
            return true;
        }

        // An induction motor's surge stands still before it is over, and what is about as much as a circuit carries is waited for
        // until the end, a soft start that climbs to it too. The swing of 0.2 s ago must itself be of a whole cycle.
        double settled = shop.Wiring.Tools.Where(tool => tool.IsRunning).Sum(tool => tool.SettledAmperes);
        return Math.Max(rms, settled) <= CircuitShare * _circuit
            && rms <= SurgeTruth.Near * settled
            && since >= _cycle + SurgeDistance
            && swing >= FallAllowed * _history.At(now - SurgeDistance);
    }

    private void Decide(long now, double rms, double swing, DetectionCore core)
    {
        double longest = _startDelay == CoreSettings.AfterSurge
            ? Math.Max(_onset + (15 * _cycle), _delayEnd + (3 * _cycle))
            : _delayEnd + (3 * _cycle);

        // What opened before the tool could be seen rests first.
        bool rests = _openedAt <= _onset + (2 * _cycle);
        double latest = Math.Max(_delayEnd, rests ? _openedAt + _relay.Rest : 0) + (2 * _cycle)
            + (_startDelay == CoreSettings.AfterSurge ? SurgeLook : 0) + _patience;

        if (_startDelay == CoreSettings.AfterSurge && swing > NarrowSwing * rms)
        {
            latest = Math.Max(latest, _onset + (CoreSettings.LongestSurgeMilliseconds * 1000L) + (4 * _cycle));
        }

        // A board that collects its garbage sees the tool so much later.
        latest += _collected - _collectedBefore;
        if (now < Math.Max(longest + _patience, latest + _cycle))
        {
            return;
        }

        _isDecided = true;
        if (_isServed && _commandedAt <= latest)
        {
            Starts++;
        }
        else if (!_wasExcused)
        {
            Missed++;
            Tell(now, _isServed
                ? $"MISSED: the command came {(_commandedAt - latest) / 1000.0:0} ms too late"
                : core.Vacuum.State is VacuumState.Held or VacuumState.UntilStop or VacuumState.Fault
                ? $"MISSED: {shop.ToolLine.Rms:0.00} A, and the vacuum is told off for no reason"
                : $"MISSED: {shop.ToolLine.Rms:0.00} A and no command");
        }
    }

    private void Tell(long now, string text) => timeline.Add(new Entry(now, Who.Judge, text));
}
