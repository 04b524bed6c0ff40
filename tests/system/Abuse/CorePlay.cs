using NanoDustSwitch.Detection;

namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>Plays a day to the core and judges it after every bucket, by what it tells and by the relay alone.</summary>
internal sealed class CorePlay
{
    private const long Minute = 60L * 1000000;
    private const long Latest = 200000;
    private const int ReadingsABucket = 5;

    private readonly AnyDay _day;
    private readonly CoreSettings _settings;
    private readonly AnyReadings _line = new();
    private readonly BucketFiller _filler = new(AnyReadings.FullScale);
    private readonly Bucket _bucket = new();
    private readonly int[] _readings = new int[ReadingsABucket];
    private readonly List<long> _starts = [];
    private DetectionCore _core = null!;
    private long _now;
    private bool _wasClosed;
    private long _openedAt;
    private bool _hasReason;
    private bool _isHeld;
    private bool _isDisturbed;
    private long _runOnSince;
    private long _runOn;

    public CorePlay(AnyDay day)
    {
        _day = day;
        _settings = day.Settings();
        _now = day.Beginning;
        ComeUp();
    }

    public int Closings { get; private set; }

    public int Starts { get; private set; }

    public int RunOns { get; private set; }

    public int Faults { get; private set; }

    public void Run()
    {
        foreach (Stretch stretch in _day.Stretches)
        {
            Play(stretch);
        }
    }

    private void Play(Stretch stretch)
    {
        Random random = new Random(stretch.Seed);
        _line.Begin(stretch);
        Do(stretch.Deed);
        for (int i = 0; i < stretch.Buckets; i++)
        {
            long before = _now;
            _now += Step(stretch, i, random);
            int count = _line.IsSilent ? 0 : random.Next(ReadingsABucket) + 1;
            for (int j = 0; j < count; j++)
            {
                _readings[j] = _line.At(_now + (j * AnyReadings.Distance));
            }

            _filler.Fill(_readings, count, _now, _bucket);
            bool isAccepted = _core.Accept(_bucket);
            Assert.AreEqual(_now > before, isAccepted, "The core trusts a clock that goes, and no other.");
            Listen(before);
            if (!isAccepted)
            {
                Assert.IsFalse(_core.IsRelayClosed, "The clock stands, and the relay is closed.");
                ComeUp();
            }
        }
    }

    private static long Step(Stretch stretch, int bucket, Random random)
    {
        switch (stretch.Clock)
        {
            case ClockKind.Late:
                return Bucket.Microseconds + (random.Next(20) == 0 ? random.NextInt64(Latest) : 0);
            case ClockKind.Stands:
                return bucket < 3 ? 0 : Bucket.Microseconds;
            case ClockKind.JumpsOn:
                return bucket == 0 ? stretch.Jump : Bucket.Microseconds;
            case ClockKind.JumpsBack:
                return bucket == 0 ? -stretch.Jump : Bucket.Microseconds;
            default:
                return Bucket.Microseconds;
        }
    }

    // What the switch does after a clock that it cannot trust: it restarts.
    private void ComeUp()
    {
        _core = new DetectionCore(
            new ConverterScale(AnyReadings.FullScale, AnyReadings.MicrovoltsACount, 850, 1750), _settings, _now);
        _wasClosed = false;
        _openedAt = _now;
        _hasReason = false;
        _isHeld = false;
        _isDisturbed = true;
        _runOnSince = -1;
        _starts.Clear();
    }

    private void Do(Deed deed)
    {
        if (deed == Deed.None)
        {
            return;
        }

        _isDisturbed = true;
        _runOnSince = -1;
        switch (deed)
        {
            case Deed.Clear:
                _core.Faults.Clear(_now);
                break;
            case Deed.HandOn:
                _core.Handle(VacuumEvent.HandOn, _now);
                break;
            case Deed.HandOff:
                _core.Handle(VacuumEvent.HandOff, _now);
                break;
            case Deed.Auto:
                _core.Handle(VacuumEvent.Auto, _now);
                _isHeld = false;
                break;
            default:
                _core.Handle(VacuumEvent.Hold, _now);
                _isHeld = true;
                break;
        }

        Listen(_now);
    }

    private void Listen(long before)
    {
        Assert.AreEqual(0, _core.Notices.Lost);
        for (Notice notice = _core.Notices.Take(); notice != null; notice = _core.Notices.Take())
        {
            if (notice.Kind == NoticeKind.StateChanged)
            {
                Hear((VacuumState)notice.First, (VacuumState)notice.Second, before);
            }
            else if (notice.Kind == NoticeKind.FaultRaised)
            {
                Faults++;
                _isDisturbed = _isDisturbed || FaultTable.Has((Fault)notice.First, FaultTraits.KeepsVacuumOff);
            }
        }

        JudgeRelay();
        if (_core.Vacuum.State == VacuumState.RunOn && _runOnSince >= 0)
        {
            Assert.IsTrue(_now - _runOnSince <= _runOn, "The run-on is over and the vacuum is still on.");
        }
    }

    private void Hear(VacuumState from, VacuumState to, long before)
    {
        bool wasOn = from == VacuumState.On || from == VacuumState.RunOn || from == VacuumState.ByHand;
        bool isOn = to == VacuumState.On || to == VacuumState.RunOn || to == VacuumState.ByHand;
        _hasReason = isOn && (wasOn ? _hasReason : to == VacuumState.ByHand || from == VacuumState.Starting);
        if (from == VacuumState.Starting && to == VacuumState.On)
        {
            Start();
        }

        if (to == VacuumState.RunOn)
        {
            _runOnSince = from == VacuumState.On ? _now : -1;
            _runOn = 1000L * (_starts.Count(time => _now - time < Minute) >= _settings.StartsAMinute
                ? Math.Max(60000, _settings.RunOnMilliseconds)
                : _settings.RunOnMilliseconds);
        }
        else if (from == VacuumState.RunOn && to == VacuumState.Idle && _runOnSince >= 0 && !_core.Vacuum.IsHeldOff)
        {
            // To one bucket: at the first one at or after its end.
            RunOns++;
            Assert.IsTrue(_now - _runOnSince >= _runOn, "The run-on was too short.");
            Assert.IsTrue(before - _runOnSince < _runOn, "The run-on was longer than to the next bucket.");
            _runOnSince = -1;
        }
    }

    // More starts by itself in a minute than allowed only with a person's doing or a fault since the one before.
    private void Start()
    {
        Starts++;
        _starts.Add(_now);
        int inAMinute = _starts.Count(time => _now - time < Minute);
        Assert.IsTrue(inAMinute <= _settings.StartsAMinute || _isDisturbed, $"{inAMinute} starts in a minute.");
        _isDisturbed = false;
    }

    private void JudgeRelay()
    {
        bool isClosed = _core.IsRelayClosed;
        if (isClosed)
        {
            Assert.IsFalse(_core.Faults.HoldsOff, "The relay is closed on a fault.");
            Assert.IsTrue(_hasReason, "The relay is closed and nothing was told that wants it.");
            Assert.IsFalse(_isHeld, "The relay is closed while held off.");
        }

        if (isClosed && !_wasClosed)
        {
            Closings++;
            long rest = RelayGate.LongestHoldMicroseconds + (_settings.RestartGapMilliseconds * 1000L);
            Assert.IsTrue(_now - _openedAt >= rest, "The relay did not rest.");
        }
        else if (!isClosed && _wasClosed)
        {
            _openedAt = _now;
        }

        _wasClosed = isClosed;
    }
}
