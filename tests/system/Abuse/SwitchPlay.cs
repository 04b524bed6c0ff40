using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>Plays a day to the whole switch and judges it after every step, by its relay line, its state and its log.</summary>
internal sealed class SwitchPlay
{
    private const long Second = 1_000_000;

    private static readonly Stretch s_quiet = new(LineKind.Quiet, ClockKind.Steady, Deed.None, 0, 0, 1);
    private static readonly Stretch s_tool = new(LineKind.Tool, ClockKind.Steady, Deed.None, 0, 0, 1);

    private readonly AnyDay _day;
    private readonly AnyBoard _board = new();
    private Switch _switch;
    private VacuumState _state;
    private long _runOnSince = -1;
    private long _restUntil = long.MinValue;
    private string? _broken;
    private bool _isFed;
    private bool _rose;
    private VacuumState _roseIn;

    public SwitchPlay(AnyDay day)
    {
        _day = day;
        _board.Begin(s_quiet);
        _board.ComeUp(day.Beginning);
        _switch = new Switch(_board);
        foreach ((SettingId id, int value) in new[]
        {
            (SettingId.StartDelay, day.StartDelay), (SettingId.RunOn, day.RunOn), (SettingId.StartsAMinute, day.StartsAMinute),
            (SettingId.RestartGap, day.RestartGap),
        })
        {
            Assert.AreEqual(SettingChange.Done, _switch.Desk.Change(id, value));
        }

        Assert.AreEqual(SettingsSave.Done, _switch.Desk.RequestSave(_switch.Now));
        _board.OnRise = () => _broken ??= WhatFeedingBreaks();
    }

    // By the rise of the line, two buckets after the command at most.
    private long Rest => RelayGate.LongestHoldMicroseconds + (_day.RestartGap * 1000L) - (2 * Bucket.Microseconds);

    public int Feedings { get; private set; }

    public int Restarts { get; private set; }

    /// <summary>Gets the reason of the last restart.</summary>
    public string LastReason { get; private set; } = "none";

    public int RunOns { get; private set; }

    public int RelaysLost { get; private set; }

    public void Run()
    {
        foreach (Stretch stretch in _day.Stretches)
        {
            _board.Begin(stretch);
            Do(stretch.Deed);
            for (int i = 0; i < stretch.Buckets; i++)
            {
                _board.Dawdle(stretch);
                Step();
            }
        }
    }

    /// <summary>
    /// Whatever came before: with the faults cleared, the vacuum handed back and a quiet minute, a tool starts it.
    /// </summary>
    public void RunToTheNextStart()
    {
        _board.Begin(s_quiet);
        Pass(Second);
        _board.Type("");
        Pass(Second);
        _board.Type("clear");
        Pass(Second);
        _board.Type("vacuum auto");
        Pass(100 * Second);
        Assert.IsFalse(_isFed, $"Still on in {_switch.Core.Vacuum.State}.");
        _board.Begin(s_tool);
        Pass(4 * Second);
        for (int i = 0; i < 3 && !_isFed; i++)
        {
            // It looks whether the vacuum feeds the sensed line, or rests after that.
            Pass(4 * Second);
        }

        Assert.IsTrue(
            _isFed,
            $"A tool does not start the vacuum any more: {_switch.Core.Vacuum.State}, faults {_switch.Core.Faults.HoldsOff}.");
    }

    private void Pass(long microseconds)
    {
        for (long i = 0; i < microseconds / Bucket.Microseconds; i++)
        {
            Step();
        }
    }

    private void Do(Deed deed)
    {
        string line = deed switch
        {
            Deed.HandOn => "vacuum on",
            Deed.HandOff => "vacuum off",
            Deed.Auto => "vacuum auto",
            Deed.Hold => "hold",
            Deed.Clear => "clear",
            _ => "",
        };
        if (line.Length > 0)
        {
            _board.Type(line);
        }
    }

    private void Step()
    {
        long before = _switch.Now;
        long bucketBefore = _switch.BucketEnd;
        _rose = false;
        bool wasHigh = _board.IsLineHigh;
        _switch.Step();
        Assert.IsNull(_broken);
        if (_board.HasRestarted)
        {
            Assert.IsFalse(_board.IsLineHigh, "The board restarts with its relay line high.");
            ComeUp();
            return;
        }

        // By the switch's own time: a stall within the readings that were taken ahead is noticed a step later, after one beat.
        long passed = _switch.Now - before;
        if (_isFed && passed > Heartbeat.LongestGapMicroseconds + (2 * Bucket.Microseconds))
        {
            // The driver may have let go: the relay is taken for dropped, and rests.
            RelaysLost++;
            Assert.IsFalse(_switch.Core.IsRelayClosed, $"A gap of {passed} µs, and the relay is taken for closed.");

            // Where the switch has opened it by its own will in this very step, for the vacuum's end or for a probe, nothing was
            // lost.
            Assert.IsTrue(
                !_switch.Core.Vacuum.WantsVacuum || _switch.Core.IsProbing || IsLossLogged(),
                $"A gap of {passed} µs that is not in the log: {LastWords()}.");
            _restUntil = _switch.Now + Rest;
        }

        if (_rose)
        {
            // Unless the same step has served a word that ends it again.
            Assert.IsTrue(
                _isFed || _roseIn != _switch.Core.Vacuum.State || HasReason(),
                $"The relay is fed in {_roseIn}, and the log does not say why: {LastWords()}.");
            Feedings += _isFed ? 0 : 1;
            _isFed = true;
        }
        else
        {
            // Every other beat is a fall.
            _isFed = _isFed && wasHigh && _switch.Core.IsRelayClosed;
        }

        JudgeRunOn(bucketBefore);
    }

    private void ComeUp()
    {
        Restarts++;
        _board.ComeUp(_day.Beginning);
        _switch = new Switch(_board);
        LastReason = _switch.Boot.Reason.ToString();
        Assert.IsFalse(_board.IsLineHigh, "The relay line is high after a boot.");
        _state = _switch.Core.Vacuum.State;
        _isFed = false;
        _runOnSince = -1;
        _restUntil = _board.Now + Rest;
    }

    private bool IsLossLogged()
    {
        for (int i = _switch.Log.Count - 1; i >= 0; i--)
        {
            LogEntry entry = _switch.Log.At(i);
            if (entry.Kind == LogKind.RelayLost && entry.Seconds == (int)(_switch.Now / Second))
            {
                return entry.Figure * 1000L > Heartbeat.LongestGapMicroseconds;
            }
        }

        return false;
    }

    // Within a call of the board's, where the switch would take a failed assertion for the board's trouble: it is told after the
    // step.
    private string? WhatFeedingBreaks()
    {
        DetectionCore core = _switch.Core;
        _rose = true;
        _roseIn = core.Vacuum.State;
        return core.Faults.HoldsOff ? "The relay is fed on a fault."
            : core.Vacuum.State is not (VacuumState.On or VacuumState.RunOn or VacuumState.ByHand)
                ? $"The relay is fed in {core.Vacuum.State}."
            : _switch.Boot.IsHeld ? "The relay is fed while held off."
            : _board.Now < _restUntil ? $"The relay did not rest: fed {_restUntil - _board.Now} µs too soon."
            : null;
    }

    // The last word of the log about the vacuum must be that it went on; a run-on goes on with what was before it, also where a
    // probe for a wrong wiring has opened the relay for a moment.
    private bool HasReason()
    {
        for (int i = _switch.Log.Count - 1; i >= 0; i--)
        {
            LogEntry entry = _switch.Log.At(i);
            if (entry.Kind == LogKind.StateChanged && entry.Second != (int)VacuumState.RunOn)
            {
                return entry.Second is (int)VacuumState.On or (int)VacuumState.ByHand;
            }
        }

        // So much has happened since that the log has no room for it.
        return _switch.Log.Count == EventLog.Length;
    }

    private string LastWords() => string.Join(
        ", ",
        Enumerable.Range(Math.Max(0, _switch.Log.Count - 5), Math.Min(5, _switch.Log.Count))
            .Select(i => _switch.Log.At(i))
            .Select(entry => $"{entry.Kind} {entry.First} {entry.Second} {entry.Figure} at {entry.Seconds} s"));

    private void JudgeRunOn(long bucketBefore)
    {
        VacuumState state = _switch.Core.Vacuum.State;
        if (state == _state)
        {
            return;
        }

        if (_state == VacuumState.RunOn && state == VacuumState.Idle && _runOnSince >= 0)
        {
            // What a word has done in this step is not in the log yet.
            LogEntry last = _switch.Log.At(_switch.Log.Count - 1);
            if (last.Kind == LogKind.StateChanged
                && last.Second == (int)VacuumState.Idle
                && last.Figure == (int)VacuumEvent.TimeUp)
            {
                long wanted = 1000L * (_switch.Core.Vacuum.IsStretched ? 60_000 : _day.RunOn);
                RunOns++;
                Assert.IsGreaterThanOrEqualTo(wanted, _switch.BucketEnd - _runOnSince);
                Assert.IsLessThan(wanted, bucketBefore - _runOnSince);
            }
        }

        // Into the run-on from by-hand the step's own time counts and not the bucket's.
        _runOnSince = state == VacuumState.RunOn && _state == VacuumState.On ? _switch.BucketEnd : -1;
        _state = state;
    }
}
