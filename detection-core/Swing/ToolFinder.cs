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

    // A reading is wild when it makes an eighth of the level of single means. A tool that is switched on within a bucket shifts
    // half of its readings, and more in the next one.
    private const int WildShift = 3;

    // Half of the stop level, as a current.
    private const int LeftShift = 2;

    // A tool on trial counts as gone after so many looks below its stop level, when nothing is left. A wild reading is seen for
    // eight looks, and the next one must not find it still there. Of narrow pulses something is left where a few of them fall
    // between the readings.
    private const int GoneLooks = 3;

    // The mean of two powers is steadier than one, and a hundred looks a second miss the very greatest: by a sixth, as a swing
    // (simulated: 1/f noise 0.84, white noise 0.88). With a seventh, 1/f noise starts the vacuum five times a year.
    private const int SmoothLacks = 5;

    // The levels are worked out in two steps, at two of the buckets that are left for it.
    private const int StepsToFollow = 2;

    private readonly RunDetector _fast = new RunDetector();
    private readonly NoiseFloor _floor = new NoiseFloor();
    private readonly NoiseFloor _slowFloor = new NoiseFloor();

    // The powers of the present second of a tool that the fast lane sees, while less might be left than it.
    private long _releaseSum;
    private int _releaseLooks;
    private bool _wasRejected;

    // Steps that are left until the levels have followed the floors.
    private int _stepsToFollow;

    // The slow lane's greatest answer of the present second; negative before there is one.
    private int _slowGreatest = -1;

    /// <summary>The window on the line that both lanes look through.</summary>
    public readonly SwingWindow Window = new SwingWindow();

    /// <summary>The slow lane.</summary>
    public readonly SlowLane Slow = new SlowLane();

    /// <summary>What stands on the line without a tool.</summary>
    public readonly StandingLoad Standing = new StandingLoad();

    /// <summary>The levels of both lanes.</summary>
    public readonly ToolLevels Levels = new ToolLevels();

    /// <summary>Whether the tool runs.</summary>
    public bool IsRunning;

    /// <summary>Whether it is the slow lane that says so.</summary>
    public bool IsSlow;

    /// <summary>Whether the slow lane has been asked about a tool that the fast lane lost, and has not answered yet.</summary>
    public bool IsUnsure;

    /// <summary>Set from outside while it is not sure whether what the fast lane sees is a tool or only a surge.</summary>
    public bool IsOnTrial;

    /// <summary>Set from outside: a power above this may be a second tool that starts beside the one that runs.</summary>
    public int RisePower = int.MaxValue;

    /// <summary>
    /// Set from outside while the slow lane has not answered yet: all that was seen of the tool so far may have been a surge,
    /// so the slow lane must see it at the start level; the stop level is not enough.
    /// </summary>
    public bool MustReachStart;

    /// <summary>
    /// Gets the fast lane's floor: about the greatest swing of the noise in a second, in sixteenths of a count.
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
        if (!keepsFloors)
        {
            Standing.Reset();
        }

        Levels.Use(startAt, stopBelow);
        UpdateLevels();
    }

    /// <summary>Takes the next bucket.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <returns>
    /// True when there is something to be looked at: the fast lane's floor was moved, once a second while no tool runs, or the
    /// power has risen above <see cref="RisePower"/>.
    /// </returns>
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

            if ((window.Place & 3) == 0)
            {
                if ((IsOnTrial || Levels.ReleasePower > 0) && !IsSlow)
                {
                    LookForRelease();
                }

                return power > RisePower;
            }

            return false;
        }

        bool isHigh = power >= Levels.LookPower && IsHigh(bucket, power);
        if (isHigh || fast.LooksAgainst != 0)
        {
            if (fast.Look(isHigh, false))
            {
                IsRunning = true;
                IsSlow = false;
                return false;
            }
        }

        // To spare the board, the slow lane takes every second bucket, and the fast floor every other of the rest: the window
        // covers eight buckets and a quarter-cycle mean covers two, so neither misses anything of the line. The levels follow
        // between them.
        if ((window.Place & 1) != 0)
        {
            return (window.Place & 2) == 0 ? LookAtNoise() : FollowFloors();
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

        // At an even place, so that after the second half it is the slow lane's turn, and every fourth time that of what looks at
        // all eight means.
        window.Place = (window.Place + 1) & ~1 & SwingWindow.Mask;
        bool isIdle = window.IsValid && (!IsRunning || IsSlow);
        bool hasLearned = isIdle && ((window.Place & 2) == 0 ? LookAtNoise() : FollowFloors());
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

        // What is left may be a lamp at the level.
        _wasRejected = !IsNothingLeft();
        if (Levels.IsNoiseLimited)
        {
            AskSlowLane();
        }
    }

    /// <summary>
    /// Starts learning afresh, because a tool has started or stopped: what the lanes have half learned belongs to the time
    /// before. After a surge of which less than a tool was left, the second goes on: a lamp at the level may be seen several
    /// times in a second, and is to be learned all the same.
    /// </summary>
    public void ResetLearning()
    {
        _releaseSum = 0;
        _releaseLooks = 0;
        if (!IsRunning && !_wasRejected)
        {
            Standing.ResetSecond();
            _slowGreatest = -1;
        }

        _wasRejected = false;
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
        Standing.Exchange(tape);
        _slowGreatest = tape.Number(_slowGreatest);
        _releaseSum = tape.Number(_releaseSum);
        _releaseLooks = tape.Number(_releaseLooks);
        _wasRejected = tape.Flag(_wasRejected);
        _stepsToFollow = tape.Number(_stepsToFollow);
        IsRunning = tape.Flag(IsRunning);
        IsSlow = tape.Flag(IsSlow);
        IsUnsure = tape.Flag(IsUnsure);
        MustReachStart = tape.Flag(MustReachStart);
        RisePower = tape.Number(RisePower);
        IsOnTrial = tape.Flag(IsOnTrial);
        UpdateLevels();
    }

    private bool LookAtNoise()
    {
        // A power above the level is a tool that is not confirmed yet, or a burst. As noise it counts as no more than the level.
        StandingLoad standing = Standing;
        int power = Window.SmoothPower();
        power = power < Levels.StartPower ? power : Levels.StartPower;
        standing.Sum += power;
        if (power > standing.Greatest)
        {
            standing.Greatest = power;
        }

        if (--standing.LooksLeft <= 0)
        {
            Learn();
        }

        return false;
    }

    private bool FollowFloors()
    {
        if (_stepsToFollow == 0)
        {
            return false;
        }

        if (--_stepsToFollow > 0)
        {
            Levels.Begin(_floor.Floor, _slowFloor.Floor, Standing);
            return false;
        }

        Levels.Complete(_floor.Floor, _slowFloor.Floor, Standing);
        return true;
    }

    // What is left may be what stood on the line before the tool started.
    private void LookForRelease()
    {
        if (IsOnTrial)
        {
            // It may yet turn out to be less than a tool.
            if (Standing.LooksLeft > 1)
            {
                LookAtNoise();
            }

            return;
        }

        _releaseSum += Window.SmoothPower();
        if (++_releaseLooks == StandingLoad.Looks)
        {
            IsRunning &= _releaseSum > (long)Levels.ReleasePower * StandingLoad.Looks;
            _releaseSum = 0;
            _releaseLooks = 0;
        }
    }

    private bool IsHigh(Bucket bucket, int power)
    {
        ToolLevels levels = Levels;
        if (power >= levels.StartPower || Window.MeanPowerOfTwo() >= levels.StartPowerOfTwo)
        {
            return true;
        }

        Window.NoteWildReading(bucket, levels.StartPeak >> WildShift);
        return Window.PeakToPeak() >= levels.StartPeak;
    }

    private void Learn()
    {
        StandingLoad standing = Standing;
        if (IsSlow)
        {
            // The slow lane sees a tool, so this second was not that of the idle line; unless what is left stood there before.
            if (!Levels.IsNoiseLimited && standing.Sum <= (long)Levels.ReleasePower * StandingLoad.Looks)
            {
                IsSlow = false;
                IsRunning = false;
            }

            standing.ResetSecond();
            return;
        }

        int noise = standing.Learn();
        _floor.Move(noise + (noise / SmoothLacks));
        if (_slowGreatest >= 0)
        {
            int above = _slowGreatest - standing.Steady;
            _slowFloor.Move(above > 0 ? above : 0);
            _slowGreatest = -1;
        }

        _stepsToFollow = StepsToFollow;
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
        else if (IsOnTrial && _fast.LooksAgainst >= GoneLooks && IsNothingLeft())
        {
            RejectStart();
        }
    }

    // Less than half of the stop level is on the line: after a wild reading nothing is left.
    private bool IsNothingLeft()
    {
        return Window.Power < Levels.StopPower >> LeftShift;
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
        else if (swing > _slowGreatest)
        {
            _slowGreatest = swing;
        }

        IsRunning = IsSlow;
    }

    private void UpdateLevels()
    {
        Levels.Begin(_floor.Floor, _slowFloor.Floor, Standing);
        Levels.Complete(_floor.Floor, _slowFloor.Floor, Standing);
    }
}
