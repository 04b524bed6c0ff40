namespace NanoDustSwitch.Detection;

/// <summary>
/// Tells from the buckets whether the tool runs. The fast lane answers within a cycle or two; while it sees no tool, the slow lane listens for
/// smaller ones, which takes it half a second. Both keep their levels clear of the noise that they learn.
/// </summary>
public sealed class ToolFinder
{
    /// <summary>Least level of one cycle, in hundredths of the floor.</summary>
    /// <remarks>
    /// A floor is about the greatest swing of a second, and a start must not come of noise in a year: the benchmark says how far above
    /// it a level has to be, for one cycle, for two, and in the slow lane.
    /// </remarks>
    public const int StartPercent = 250;

    /// <summary>Least level of two cycles, in hundredths of the floor.</summary>
    public const int StartOfTwoPercent = 188;

    /// <summary>The slow lane's answers of white noise are about so many times smaller than the fast lane's swings; what it learns is its own.</summary>
    public const int SlowShareOfNoise = 4;

    private const int SlowStartPercent = 240;

    // The stop level only keeps clear of it; common practice, no source.
    private const int StopPercent = 125;

    // The peak-to-peak of single means has more noise in it than the pair; it counts where the level is so many times the floor.
    private const int PeakPercent = 500;

    // Single means show narrow pulses up to 1.63 times as large as the pair does. What they start must not be below the stop level for it.
    private const int PeakOverStopPercent = 165;

    // Only what shows half of a level in the last cycle can be new in two, for a whole level in the one before would have been seen;
    // and only what shows a quarter is worth the look at single means.
    private const int LookOfTwoShift = 1;
    private const int PeakLookShift = 2;

    // A taught start-at may lie below the fast lane's noise, where only the slow lane finds the tool.
    private const int CapOverNoisePercent = 125;

    private const int SlowLooksASecond = 10;

    private readonly RunDetector _fast = new RunDetector();
    private readonly NoiseFloor _floor = new NoiseFloor(Bucket.ASecond / 2);
    private readonly NoiseFloor _slowFloor = new NoiseFloor(SlowLooksASecond);
    private int _startAt;
    private int _stopBelow;
    private int _startPower;
    private int _startPowerOfTwo;
    private int _stopPower;
    private int _startPeak;
    private int _lookPower;
    private int _slowStart;
    private int _slowStop;
    private bool _isNoiseLimited;

    /// <summary>The window that all of it looks at.</summary>
    public readonly SwingWindow Window = new SwingWindow();

    /// <summary>The slow lane.</summary>
    public readonly SlowLane Slow = new SlowLane();

    /// <summary>Whether the tool runs.</summary>
    public bool IsRunning;

    /// <summary>Whether it is the slow lane that says so.</summary>
    public bool IsSlow;

    /// <summary>Whether the slow lane has been asked about a tool that the fast lane lost, and has not answered yet.</summary>
    public bool IsUnsure;

    /// <summary>Set by the reader while there is only a surge behind what the slow lane was asked about: it must reach the start level then.</summary>
    public bool MustShow;

    /// <summary>Swing at which one cycle starts, in sixteenths of a count.</summary>
    public int Start;

    /// <summary>Swing at which two cycles start, in sixteenths of a count; the least that the fast lane takes for a tool.</summary>
    public int StartOfTwo;

    /// <summary>Swing below which a cycle shows no tool any more, in sixteenths of a count.</summary>
    public int Stop;

    /// <summary>Swing at which the most patient of the lanes starts, in sixteenths of a count.</summary>
    public int LeastStart;

    /// <summary>Swing below which a tool has stopped for the most patient of them, in sixteenths of a count.</summary>
    public int LeastStop;

    /// <summary>Gets the fast lane's floor: about the greatest swing of a second without a tool, in sixteenths of a count.</summary>
    public int Floor
    {
        get { return _floor.Floor; }
    }

    /// <summary>Gets a value indicating whether the floor has reached its cap: the line is too noisy for the levels that were set.</summary>
    public bool IsAtCap
    {
        get { return _floor.IsAtCap; }
    }

    /// <summary>Takes new levels.</summary>
    /// <param name="startAt">Swing at which a tool counts as running, in sixteenths of a count.</param>
    /// <param name="stopBelow">Swing below which it counts as stopped; under <paramref name="startAt"/>.</param>
    /// <param name="noise">Swing of the idle line as it was taught.</param>
    /// <param name="confirm">Buckets in a row that make a start.</param>
    /// <param name="keepsFloors">Whether what was learned stays: it was learned in the same units.</param>
    public void Use(int startAt, int stopBelow, int noise, int confirm, bool keepsFloors)
    {
        _startAt = startAt;
        _stopBelow = stopBelow;
        _fast.StartLooks = confirm;
        _floor.Set(keepsFloors ? _floor.Floor : noise, Above(noise, CapOverNoisePercent, startAt));
        _slowFloor.Set(keepsFloors ? _slowFloor.Floor : noise / SlowShareOfNoise, startAt);
        SetLevels();
    }

    /// <summary>Takes the next bucket.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <returns>True when the fast lane's floor has moved, once a second while no tool runs.</returns>
    public bool Accept(Bucket bucket)
    {
        SwingWindow window = Window;
        window.Add(bucket.Sum, bucket.Count);
        if (!window.IsValid)
        {
            _fast.Skip();
            Slow.Void();
            return false;
        }

        RunDetector fast = _fast;
        int power = window.Power;
        if (fast.IsRunning)
        {
            bool isLow = power < _stopPower;
            if (isLow || fast.Against != 0)
            {
                LookForStop(isLow);
            }

            return false;
        }

        bool isHigh = power >= _lookPower && IsHigh(power);
        if (isHigh || fast.Against != 0)
        {
            fast.Look(isHigh);
            if (fast.IsRunning)
            {
                IsRunning = true;
                IsSlow = false;
                return false;
            }
        }

        // By turns, to spare the board: the window and the means' overlap both bridge a bucket.
        if ((window.Place & 1) == 0)
        {
            // Above the level it is a tool that is not confirmed yet, or a burst; as noise it counts up to the level.
            NoiseFloor floor = _floor;
            if (power > floor.Greatest)
            {
                floor.Greatest = power < _startPower ? power : _startPower;
            }

            return --floor.LooksLeft <= 0 && Learn();
        }

        if (isHigh && !IsSlow)
        {
            // The fast lane's to judge; a spark's or a surge's first cycle would stay in the slow lane's blocks.
            Slow.Void();
        }
        else if (Slow.Add(window.QuarterMean()))
        {
            JudgeSlowly();
        }

        return false;
    }

    /// <summary>Forgets the readings so far: time has passed without any.</summary>
    public void Void()
    {
        Window.Void();
    }

    /// <summary>Bridges one missing bucket.</summary>
    public void Bridge()
    {
        Window.Add(0, 0);
    }

    /// <summary>Takes the fast lane's decision back: what looked like a tool was a surge and nothing else.</summary>
    public void Drop()
    {
        _fast.Drop();
        IsRunning = false;
        if (_isNoiseLimited)
        {
            AskSlowLane();
        }
    }

    /// <summary>A tool has come or gone, by whichever lane: what the lanes have half learned is of the time before.</summary>
    public void Turn()
    {
        _floor.Restart();
        _slowFloor.Restart();
        if (!IsSlow)
        {
            Slow.Void();
        }
    }

    /// <summary>Exchanges the state with a tape; the levels are worked out anew.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        Window.Exchange(tape);
        _fast.Exchange(tape);
        _floor.Exchange(tape);
        Slow.Exchange(tape);
        _slowFloor.Exchange(tape);
        IsRunning = tape.Flag(IsRunning);
        IsSlow = tape.Flag(IsSlow);
        IsUnsure = tape.Flag(IsUnsure);
        MustShow = tape.Flag(MustShow);
        SetLevels();
    }

    private bool IsHigh(int power)
    {
        return power >= _startPower || Window.MeanPowerOfTwo() >= _startPowerOfTwo || Window.PeakToPeak() >= _startPeak;
    }

    private bool Learn()
    {
        if (IsSlow)
        {
            _floor.Restart();
            return false;
        }

        _floor.Move();
        SetLevels();
        return true;
    }

    private void LookForStop(bool isLow)
    {
        _fast.Look(isLow);
        if (!_fast.IsRunning)
        {
            IsRunning = false;
            if (_isNoiseLimited)
            {
                AskSlowLane();
            }
        }
    }

    // Noise may have lifted a small tool over the level for a moment: the slow lane decides whether it still runs.
    private void AskSlowLane()
    {
        IsRunning = true;
        IsSlow = true;
        IsUnsure = true;
        MustShow = false;
        Slow.Void();
    }

    private void JudgeSlowly()
    {
        int swing = Slow.Swing;
        if (IsSlow)
        {
            // What has only been seen in a surge must show that it is a tool.
            IsSlow = swing >= (MustShow ? _slowStart : _slowStop);
            IsUnsure = false;
            MustShow = false;
        }
        else if (swing >= _slowStart)
        {
            IsSlow = true;
        }
        else if (_slowFloor.Accept(SwingWindow.PowerOf(swing)))
        {
            SetLevels();
        }

        IsRunning = IsSlow;
    }

    private static int Above(int floor, int percent, int set)
    {
        int overFloor = floor * percent / 100;
        return set > overFloor ? set : overFloor;
    }

    private void SetLevels()
    {
        int floor = _floor.Floor;
        Start = Above(floor, StartPercent, _startAt);
        Stop = Above(floor, StopPercent, _stopBelow);
        StartOfTwo = Above(floor, StartOfTwoPercent, _startAt);
        _slowStart = Above(_slowFloor.Floor, SlowStartPercent, _startAt);
        _slowStop = Above(_slowFloor.Floor, StopPercent, _stopBelow);
        LeastStart = StartOfTwo < _slowStart ? StartOfTwo : _slowStart;
        LeastStop = Stop < _slowStop ? Stop : _slowStop;
        _isNoiseLimited = Start > _startAt;
        _startPower = SwingWindow.PowerOf(Start);
        _startPowerOfTwo = SwingWindow.PowerOf(StartOfTwo);
        _stopPower = SwingWindow.PowerOf(Stop);
        _lookPower = SwingWindow.PowerOf(StartOfTwo >> LookOfTwoShift);

        // Single means show a little less of a sine than the scale counts on.
        int peak = Above(Stop, PeakOverStopPercent, Start);
        bool isPeakClear = _startAt >= (long)floor * PeakPercent / 100;
        _startPeak = isPeakClear ? peak - (peak >> 5) : int.MaxValue;
        int peakLook = SwingWindow.PowerOf(peak >> PeakLookShift);
        if (isPeakClear && peakLook < _lookPower)
        {
            _lookPower = peakLook;
        }
    }
}
