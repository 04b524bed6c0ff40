namespace NanoDustSwitch.Detection;

/// <summary>
/// Tells from the buckets whether the tool runs. The fast lane answers within a cycle or two. While it sees no tool, the slow
/// lane listens for smaller ones, which takes it half a second. Both learn the noise of the line and keep their levels above
/// it.
/// </summary>
public sealed class ToolFinder
{
    /// <summary>
    /// By how much the slow lane's answers to white noise are smaller than the fast lane's swings: the slow floor to begin with.
    /// </summary>
    public const int SlowShareOfNoise = 4;

    // The cap of the fast floor, where the noise that was taught is already more than start-at: there only the slow lane finds
    // the tool.
    private const int CapOverNoisePercent = 125;

    private const int SlowLooksASecond = 10;

    private readonly RunDetector _fast = new RunDetector();
    private readonly NoiseFloor _floor = new NoiseFloor(Bucket.ASecond / 2);
    private readonly NoiseFloor _slowFloor = new NoiseFloor(SlowLooksASecond);

    /// <summary>The window on the line that both lanes look through.</summary>
    public readonly SwingWindow Window = new SwingWindow();

    /// <summary>The slow lane.</summary>
    public readonly SlowLane Slow = new SlowLane();

    /// <summary>The levels of both lanes.</summary>
    public readonly ToolLevels Levels = new ToolLevels();

    /// <summary>Whether the tool runs.</summary>
    public bool IsRunning;

    /// <summary>Whether it is the slow lane that says so.</summary>
    public bool IsSlow;

    /// <summary>Whether the slow lane has been asked about a tool that the fast lane lost, and has not answered yet.</summary>
    public bool IsUnsure;

    /// <summary>
    /// Set from outside while the slow lane has not answered yet: all that was seen of the tool so far may have been a surge,
    /// so the slow lane must see it at the start level; the stop level is not enough.
    /// </summary>
    public bool MustReachStart;

    /// <summary>
    /// Gets the fast lane's floor: about the greatest swing of a second without a tool, in sixteenths of a count.
    /// </summary>
    public int Floor
    {
        get { return _floor.Floor; }
    }

    /// <summary>
    /// Gets a value indicating whether the floor has reached its cap: the line is too noisy for the levels that were set.
    /// </summary>
    public bool IsAtCap
    {
        get { return _floor.IsAtCap; }
    }

    /// <summary>Takes new settings.</summary>
    /// <param name="startAt">Swing at which a tool counts as running, in sixteenths of a count.</param>
    /// <param name="stopBelow">Swing below which it counts as stopped; under <paramref name="startAt"/>.</param>
    /// <param name="noise">Swing of the idle line as it was taught.</param>
    /// <param name="confirm">Buckets in a row that make a start.</param>
    /// <param name="keepsFloors">
    /// Whether the floors that were learned stay: only if they were learned with the same sensor.
    /// </param>
    public void Use(int startAt, int stopBelow, int noise, int confirm, bool keepsFloors)
    {
        _fast.StartLooks = confirm;
        _floor.Set(keepsFloors ? _floor.Floor : noise, ToolLevels.Above(noise, CapOverNoisePercent, startAt));
        _slowFloor.Set(keepsFloors ? _slowFloor.Floor : noise / SlowShareOfNoise, startAt);
        Levels.Use(startAt, stopBelow);
        UpdateLevels();
    }

    /// <summary>Takes the next bucket.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <returns>True when the fast lane's floor was moved, once a second while no tool runs.</returns>
    public bool Accept(Bucket bucket)
    {
        SwingWindow window = Window;
        window.Add(bucket.Sum, bucket.Count);
        if (!window.IsValid)
        {
            _fast.Reset();
            Slow.Reset();
            return false;
        }

        RunDetector fast = _fast;
        int power = window.Power;
        if (IsRunning && !IsSlow)
        {
            bool isLow = power < Levels.StopPower;
            if (isLow || fast.LooksAgainst != 0)
            {
                LookForStop(isLow);
            }

            return false;
        }

        bool isHigh = power >= Levels.LookPower && IsHigh(power);
        if (isHigh || fast.LooksAgainst != 0)
        {
            if (fast.Look(isHigh, false))
            {
                IsRunning = true;
                IsSlow = false;
                return false;
            }
        }

        // To spare the board, the fast floor takes every second bucket and the slow lane the others: the window covers eight
        // buckets and a quarter-cycle mean covers two, so neither misses anything of the line.
        if ((window.Place & 1) == 0)
        {
            return LookAtNoise(power);
        }

        if (isHigh && !IsSlow)
        {
            // Here the fast lane judges. Without this the first cycle of a spark or of a surge would stay in the slow lane's
            // blocks.
            Slow.Reset();
        }
        else if (Slow.Add(window.QuarterMean()))
        {
            JudgeSlowly();
        }

        return false;
    }

    /// <summary>
    /// Takes the first half of a long bucket; <see cref="Accept"/> takes the second one. So the floor and the slow lane both get
    /// every long bucket, in which there is a quarter-cycle mean that overlaps no other.
    /// </summary>
    /// <param name="bucket">The bucket.</param>
    /// <returns>True when the fast lane's floor was moved.</returns>
    public bool AcceptFirstHalf(Bucket bucket)
    {
        SwingWindow window = Window;
        if (bucket.Count == 0)
        {
            // Two halves without readings are too many for the window.
            window.Reset();
            return false;
        }

        // At an odd place, so that the second half comes to an even one, after which the slow lane's turn is.
        window.Place |= 1;
        bool hasLearned = window.IsValid && (!IsRunning || IsSlow) && LookAtNoise(window.Power);
        window.AddFirstHalf(bucket.Sum, bucket.Count);
        return hasLearned;
    }

    /// <summary>
    /// Takes back a start of the fast lane, because it was only a surge. On a noisy line the slow lane has the last word.
    /// </summary>
    public void RejectStart()
    {
        _fast.Reset();
        IsRunning = false;
        if (Levels.IsNoiseLimited)
        {
            AskSlowLane();
        }
    }

    /// <summary>
    /// Starts learning afresh, because a tool has started or stopped: what the lanes have half learned belongs to the time
    /// before.
    /// </summary>
    public void ResetLearning()
    {
        _floor.ResetSecond();
        _slowFloor.ResetSecond();
        if (!IsSlow)
        {
            Slow.Reset();
        }
    }

    /// <summary>Exchanges the state with a tape; the levels follow from it.</summary>
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
        MustReachStart = tape.Flag(MustReachStart);
        UpdateLevels();
    }

    private bool LookAtNoise(int power)
    {
        // A power above the level is a tool that is not confirmed yet, or a burst. As noise it counts as no more than the level.
        NoiseFloor floor = _floor;
        if (power > floor.Greatest)
        {
            floor.Greatest = power < Levels.StartPower ? power : Levels.StartPower;
        }

        return --floor.LooksLeft <= 0 && Learn();
    }

    private bool IsHigh(int power)
    {
        ToolLevels levels = Levels;
        return power >= levels.StartPower
            || Window.MeanPowerOfTwo() >= levels.StartPowerOfTwo
            || Window.PeakToPeak() >= levels.StartPeak;
    }

    private bool Learn()
    {
        if (IsSlow)
        {
            // The slow lane sees a tool, so this second was not the noise of the idle line.
            _floor.ResetSecond();
            return false;
        }

        _floor.Move();
        UpdateLevels();
        return true;
    }

    private void LookForStop(bool isLow)
    {
        if (!_fast.Look(isLow, true))
        {
            IsRunning = false;
            if (Levels.IsNoiseLimited)
            {
                AskSlowLane();
            }
        }
    }

    // Noise may have lifted a small tool over the start level for a moment, and it falls below the stop level now although it
    // still runs. The slow lane decides; until it has answered the tool counts as running.
    private void AskSlowLane()
    {
        IsRunning = true;
        IsSlow = true;
        IsUnsure = true;
        MustReachStart = false;
        Slow.Reset();
    }

    private void JudgeSlowly()
    {
        ToolLevels levels = Levels;
        int swing = Slow.Swing;
        if (IsSlow)
        {
            IsSlow = swing >= (MustReachStart ? levels.SlowStart : levels.SlowStop);
            IsUnsure = false;
            MustReachStart = false;
        }
        else if (swing >= levels.SlowStart)
        {
            IsSlow = true;
        }
        else if (_slowFloor.Accept(SwingWindow.PowerOf(swing)))
        {
            UpdateLevels();
        }

        IsRunning = IsSlow;
    }

    private void UpdateLevels()
    {
        Levels.Update(_floor.Floor, _slowFloor.Floor);
    }
}
