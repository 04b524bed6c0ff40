namespace NanoDustSwitch.Detection;

/// <summary>
/// Tells when a tool's start surge is over, and learns from each start to how low the tool's current comes.
/// </summary>
/// <remarks>
/// <para>
/// A surge is over when the last 0.2 s hardly fell against the 0.2 s before them. That alone is not enough: an induction motor
/// draws nearly the same great current until it has come to speed. So the current must also have come down from where it stood
/// at first, or have stood still for 0.8 s. What is above the circuit's amperes is a surge however still it stands, and a current
/// that climbs is a soft start, which has no surge.
/// </para>
/// <para>
/// A start that is known (<see cref="ToolBook"/>) is waited for no longer than until the current has come to the level that it
/// came to before. A current that steps up is a new onset: of a tool whose lamp or electronics come on before its motor.
/// </para>
/// </remarks>
public sealed class SurgeWatch
{
    /// <summary>Stretches of 20 ms in 0.2 s, which are ten whole cycles of 50 Hz and twelve of 60 Hz.</summary>
    public const int Half = 10;

    /// <summary>Stretches after which a current that never came down is believed to have no surge.</summary>
    public const int StretchesToBelieve = 38;

    /// <summary>
    /// Buckets that are left out after an onset: the tool's first cycle may be half a one, and the window still holds some of
    /// the time before it, so their swing is no measure of the surge.
    /// </summary>
    public const int LeftOut = SwingWindow.Length * 3 / 4;

    private const long Never = long.MaxValue;
    private const long StretchMicroseconds = SwingWindow.Length * Bucket.Microseconds;
    private const int Tenth = Half / 2;
    private const int Mask = 31;

    // About 3 A with the default sensor, from which no root is far.
    private const int FirstGuess = 4096;

    // Where this many percent of the readings stand at a rail, the top of the current is cut off and its swing says nothing.
    private const int MuchClippedPercent = 15;

    // The height of an onset is the mean of its first two stretches; a second figure is taken a tenth of a second later.
    private const int OnsetStretches = 2;
    private const int AfterStretches = OnsetStretches + 4;

    // 0.2 s may be lower by a hundredth than the 0.2 s before, and by an eighth of the noise.
    private const int LeastFall = 100;
    private const int NoiseShift = 3;

    // Half as much again as the most of the last four stretches is a step up. Of narrow pulses a stretch or two may fall into the
    // holes between the readings, and what follows is no step.
    private const int StepStretches = 4;

    // No tool steps up more often than this in a start; what does is narrow pulses that come and go.
    private const int MostSteps = 3;

    // A single bucket must show twice that most: it ripples. As a power, which goes with the square.
    private const long StepPower = 4;

    // What stands below seven tenths of the onset's height has come down.
    private const int KneePercent = 70;

    // A motor's or a transformer's direct current offset dies away within some 0.1 s and makes the onset look higher than the
    // plateau behind it. It shows in the means of the readings over 0.1 s, the first one against the second: by more than a
    // sixteenth of the amplitude, so a thirty-second of the swing.
    private const int OffsetShift = 5;

    // A climb by a sixteenth in 60 ms, and again in the next 60 ms, is a soft start. A climb that has become slower may be about
    // to end, with a motor that has come to speed, and its current falls from there.
    private const int ClimbStretches = 3;
    private const int ClimbShift = 4;

    // A known level is reached within a sixteenth above and an eighth below, and kept to a thirty-second for 60 ms. An onset
    // that stands less than an eighth above it is no surge, but another heater's: it need not fall.
    private const int AboveShift = 4;
    private const int BelowShift = 3;
    private const int NoSurgeShift = 3;
    private const int StillShift = 5;
    private const int StillStretches = 3;

    // A level that is lower by a thirty-second is news.
    private const int NewsShift = 5;

    // The share of the third harmonic is taken over a while, for as long as the level is the same within a sixty-fourth.
    private const int SameShift = 6;
    private const int ThirdMask = 7;
    private const int ThirdShift = 2;

    // A level that has not fallen for 1.8 s is what the tool settles at.
    private const int StretchesToSettle = 90;

    // Beside another tool there is less time.
    private const int StretchesBeside = 40;

    private readonly ToolBook _book;
    private readonly int[] _swings = new int[Mask + 1];

    // The last stretch: the swing of the mains frequency, half of its power in the last bucket, whether the readings were cut
    // off, and whether it is still to be judged.
    private int _swing = FirstGuess;
    private int _lastHalf;
    private bool _isClipped;
    private bool _isMeasured;

    private int _count;
    private int _steps;

    // Sums of the swings of the last 0.2 s and of the 0.2 s before.
    private int _late;
    private int _early;
    private int _leastLate;
    private int _settledAt;
    private int _most;
    private int _offCentre;
    private int _range;
    private int _kneeBelow;
    private int _sumOfMeans;
    private int _halfStepPower;
    private bool _isSteady;
    private bool _hasComeDown;
    private bool _isKnown;
    private int _knownMost;
    private int _knownHighest;

    /// <summary>
    /// Until when nothing has to be done, in microseconds: <see cref="Accept"/> is to be called with the
    /// first bucket that ends then or later.
    /// </summary>
    public long NextLook = Never;

    /// <summary>What the start has shown so far.</summary>
    public readonly ToolFigures Seen = new ToolFigures();

    /// <summary>Whether the start has shown something new: it is worth asking which tool it is.</summary>
    public bool IsNews;

    /// <summary>Whether there is more to do at the next look than to look: to ask which tool it is, or to learn.</summary>
    public bool HasMore;

    /// <summary>Readings at a rail since the last stretch, to be counted up from outside.</summary>
    public int Clipped;

    /// <summary>Whether the start is over, and <see cref="Seen"/> is to be learned with the next buckets.</summary>
    public bool IsEnding;

    /// <summary>Whether it is the start of a second tool, beside one that runs.</summary>
    public bool IsBeside;

    /// <summary>A swing above this is more than the circuit carries, in sixteenths of a count.</summary>
    public int Circuit = int.MaxValue;

    /// <summary>Initializes a new instance of the <see cref="SurgeWatch"/> class.</summary>
    /// <param name="book">What is known of the tools.</param>
    public SurgeWatch(ToolBook book)
    {
        _book = book;
    }

    /// <summary>
    /// Gets a value indicating whether a start is watched: for as long as a surge may last, or until the tool has stopped.
    /// </summary>
    public bool IsWatching
    {
        get { return NextLook != Never; }
    }

    /// <summary>Gets a value indicating whether nothing more is to be seen of the start.</summary>
    public bool IsSettled
    {
        get { return _count >= _settledAt; }
    }

    /// <summary>Begins at the moment when a tool is seen.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Begin(long now)
    {
        IsEnding = false;
        IsBeside = false;
        IsNews = false;
        HasMore = false;
        _steps = 0;
        Seen.Height = 0;
        Seen.First = 0;
        Seen.Other = 0;
        BeginOnset(now);
    }

    /// <summary>
    /// Ends the watch. What there is to learn falls into other buckets; <see cref="IsEnding"/> tells it.
    /// </summary>
    /// <param name="learns">Whether it was a tool's start.</param>
    public void End(bool learns)
    {
        if (!IsWatching)
        {
            return;
        }

        IsEnding = learns && Seen.Level < int.MaxValue && Seen.Level > 0 && Seen.Height > 0;
        NextLook = IsEnding ? 0 : Never;
        HasMore |= IsEnding;
    }

    /// <summary>
    /// Measures the stretch that ends with a bucket, and judges it with the next one: both in one would be dear.
    /// </summary>
    /// <param name="bucket">The bucket, the first one at <see cref="NextLook"/> or later.</param>
    /// <param name="window">The window, a valid one.</param>
    /// <param name="noise">Noise floor, a swing in sixteenths of a count.</param>
    /// <returns>True when a stretch was judged: <see cref="IsOver"/> tells the answer.</returns>
    public bool Accept(Bucket bucket, SwingWindow window, int noise)
    {
        if (!_isMeasured)
        {
            Measure(bucket, window);
            return false;
        }

        _isMeasured = false;
        NextLook += StretchMicroseconds;
        int swing = _swing;
        if (_lastHalf > _halfStepPower || (_count >= StepStretches && _steps < MostSteps && swing > _most / 2 * 3))
        {
            _steps++;
            BeginOnset(NextLook - StretchMicroseconds);
            return false;
        }

        Add(swing);
        int steady = (_early / LeastFall) + (noise * Half >> NoiseShift);
        _isSteady = _count >= 2 * Half && _early - _late <= steady;
        if (_late < _leastLate && _count >= Half && ((_isSteady && _late - _early <= steady) || IsFlat(swing)))
        {
            NoteLevel(window);
        }

        if (!_hasComeDown && _count >= Half && _late < _kneeBelow)
        {
            _hasComeDown = true;
            Seen.Knee = _count;
        }

        return true;
    }

    /// <summary>Tells whether the surge is over, after the last stretch was judged.</summary>
    /// <returns>True when it is.</returns>
    public bool IsOver()
    {
        int swing = _swing;
        return swing <= Circuit && !_isClipped
            && (IsAtKnownLevel(swing) || IsClimbing() || (_isSteady && (_hasComeDown || _count >= StretchesToBelieve)));
    }

    /// <summary>Ends the watch after the longest surge.</summary>
    /// <param name="window">A valid window.</param>
    public void EndLast(SwingWindow window)
    {
        if (Seen.Level == int.MaxValue)
        {
            // A brushed motor with little to turn runs up for longer than is waited for.
            NoteLevel(window);
        }

        End(true);
    }

    /// <summary>Looks at the waveform once more, between two judgements, when the vacuum waits for nothing.</summary>
    /// <param name="window">A valid window.</param>
    public void LookAgain(SwingWindow window)
    {
        if (_isSteady && (_count & ThirdMask) == 0 && Seen.Level < int.MaxValue && _late - _leastLate < _leastLate >> SameShift)
        {
            Seen.Third += (window.ThirdHarmonic() - Seen.Third) >> ThirdShift;
        }
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_swings);
        _swing = tape.Number(_swing);
        _lastHalf = tape.Number(_lastHalf);
        _isClipped = tape.Flag(_isClipped);
        _isMeasured = tape.Flag(_isMeasured);
        _count = tape.Number(_count);
        _steps = tape.Number(_steps);
        _late = tape.Number(_late);
        _early = tape.Number(_early);
        _leastLate = tape.Number(_leastLate);
        _most = tape.Number(_most);
        _offCentre = tape.Number(_offCentre);
        _range = tape.Number(_range);
        Seen.Exchange(tape);
        _kneeBelow = tape.Number(_kneeBelow);
        _sumOfMeans = tape.Number(_sumOfMeans);
        _halfStepPower = tape.Number(_halfStepPower);
        _isSteady = tape.Flag(_isSteady);
        _hasComeDown = tape.Flag(_hasComeDown);
        _isKnown = tape.Flag(_isKnown);
        _knownMost = tape.Number(_knownMost);
        _knownHighest = tape.Number(_knownHighest);
        NextLook = tape.Number(NextLook);
        Clipped = tape.Number(Clipped);
        IsEnding = tape.Flag(IsEnding);
        IsBeside = tape.Flag(IsBeside);
        IsNews = tape.Flag(IsNews);
        HasMore = tape.Flag(HasMore);
        _settledAt = tape.Number(_settledAt);
    }

    private void Measure(Bucket bucket, SwingWindow window)
    {
        // The mean over a stretch ripples less than the power of a single bucket.
        _swing = SwingWindow.SwingOf(2 * window.MeanOf(window.Halves, 0), _swing);
        _lastHalf = window.Halves[(window.Place - 1) & SwingWindow.Mask];
        _isClipped = Clipped > 0 && Clipped * 100 >= bucket.Count * SwingWindow.Length * MuchClippedPercent;
        Clipped = 0;
        _isMeasured = true;
        NextLook = bucket.EndTime;
        if (_count < Half)
        {
            // The sum of the means over the second tenth of a second, less that over the first one.
            if (_count < Tenth)
            {
                _sumOfMeans -= window.SumOfMeans();
            }
            else
            {
                // Four means in quarters of a count make the mean in sixteenths.
                int sum = window.SumAndExtremes();
                _sumOfMeans += sum;
                _offCentre += window.Greatest + window.Least - (2 * sum);
                _range += window.Greatest - window.Least;
            }
        }
    }

    private void BeginOnset(long now)
    {
        Seen.Begin();
        _offCentre = 0;
        _range = 0;
        _count = 0;
        _late = 0;
        _early = 0;
        _leastLate = int.MaxValue;
        _settledAt = int.MaxValue;
        _hasComeDown = false;
        _isKnown = false;
        _sumOfMeans = 0;
        _halfStepPower = int.MaxValue;
        Clipped = 0;
        _isMeasured = false;
        NextLook = now + (LeftOut * Bucket.Microseconds) + StretchMicroseconds;
    }

    private void Add(int swing)
    {
        int[] swings = _swings;
        int count = _count;
        int middle = count >= Half ? swings[(count - Half) & Mask] : 0;
        _late += swing - middle;
        _early += middle - (count >= 2 * Half ? swings[(count - (2 * Half)) & Mask] : 0);
        swings[count & Mask] = swing;
        int most = swing;
        for (int i = 1; i < StepStretches && i <= count; i++)
        {
            int before = swings[(count - i) & Mask];
            most = before > most ? before : most;
        }

        _most = most;
        long halfStep = _steps < MostSteps ? StepPower * SwingWindow.PowerOf(most) / 2 : int.MaxValue;
        _halfStepPower = halfStep < int.MaxValue ? (int)halfStep : int.MaxValue;
        _count = ++count;
        switch (count)
        {
            case OnsetStretches:
                Seen.Height = (swing + swings[0]) / 2;
                _kneeBelow = Seen.Height * Half / 100 * KneePercent;
                Recall();
                break;
            case AfterStretches:
                Seen.After = (swing + swings[(count - 2) & Mask]) / 2;
                Recall();
                break;
            case Half:
                Seen.Half = (_offCentre < 0 ? -_offCentre : _offCentre) * ToolFigures.Whole / (_range + 1);
                JudgeOffset();
                break;
        }
    }

    // Soon enough to tell which tool it is, and not sure enough to end a surge.
    private bool IsFlat(int swing)
    {
        int away = swing >> StillShift;
        int[] swings = _swings;
        int fall = swings[(_count - Half) & Mask] - swing;
        return fall <= away && fall >= -away && IsWithin(swing - swings[(_count - Tenth) & Mask], away);
    }

    private static bool IsWithin(int difference, int most)
    {
        return difference <= most && -difference <= most;
    }

    private void NoteLevel(SwingWindow window)
    {
        _leastLate = _late;
        int level = _late / Half;
        if (level < Seen.Level - (Seen.Level >> NewsShift))
        {
            // What fell by so much was still part of the surge.
            Seen.Length = _count;
            IsNews = true;
            HasMore = true;
            Seen.Third = 0;
            _settledAt = _count + (IsBeside ? StretchesBeside : StretchesToSettle);
        }

        Seen.Level = level;
        int third = window.ThirdHarmonic();
        Seen.Third += Seen.Third == 0 ? third : (third - Seen.Third) >> ThirdShift;
    }

    private void Recall()
    {
        _isKnown = _book.Find(Seen.Height, Seen.After);
        int lowest = _book.Lowest;
        _knownMost = lowest + (lowest >> (Seen.Height - lowest < lowest >> NoSurgeShift ? NoSurgeShift : AboveShift));
        _knownHighest = _book.Highest;
    }

    // Where there was an offset, only what comes down from the plateau after it counts. Five stretches of four means in quarters
    // of a count make five times the offset in sixteenths, and the swings of ten stretches ten times the swing.
    private void JudgeOffset()
    {
        int offset = _sumOfMeans < 0 ? -_sumOfMeans : _sumOfMeans;
        if (offset > _late >> (OffsetShift + 1))
        {
            _kneeBelow = _late / 100 * KneePercent;
        }
    }

    private bool IsAtKnownLevel(int swing)
    {
        if (!_isKnown || _count < StillStretches || swing > _knownMost)
        {
            return false;
        }

        int before = _swings[(_count - StillStretches) & Mask];
        return swing >= _knownHighest - (_knownHighest >> BelowShift)
            ? before - swing < swing >> StillShift
            : _knownHighest < ToolBook.Another && swing - before > before >> StillShift;
    }

    private bool IsClimbing()
    {
        if (_count < (2 * ClimbStretches) + 2)
        {
            return false;
        }

        int last = Pair(_count);
        int middle = Pair(_count - ClimbStretches);
        int first = Pair(_count - (2 * ClimbStretches));
        int climb = middle - first;
        return last - middle > middle >> ClimbShift && climb > first >> ClimbShift && last - middle > climb - (climb >> 2);
    }

    // Two stretches together ripple less than one.
    private int Pair(int count)
    {
        return _swings[(count - 1) & Mask] + _swings[(count - 2) & Mask];
    }
}
