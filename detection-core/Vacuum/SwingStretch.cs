namespace NanoDustSwitch.Detection;

/// <summary>
/// Measures a tool's start in stretches of 20 ms: the mean strength of the mains frequency, which ripples less over such a
/// stretch than a single window does.
/// </summary>
public sealed class SwingStretch
{
    /// <summary>
    /// Buckets that are left out after an onset: the tool's first cycle may be half a one, and the window still holds some of
    /// the time before it, so their swing is no measure of the surge.
    /// </summary>
    public const int LeftOut = SwingWindow.Length * 3 / 4;

    // Where this many percent of the readings stand at a rail, the top of the current is cut off and its swing says nothing.
    private const int MuchClippedPercent = 15;

    // About 3 A with the default sensor, from which no root is far.
    private const int FirstGuess = 4096;

    /// <summary>See <see cref="Third"/>.</summary>
    public const int ThirdParts = 17;

    // It follows within ten stretches.
    private const int ThirdShift = 2;

    private int _buckets;
    private long _powerSum;
    private long _halfSum;
    private int _readings;
    private int _clipped;
    private int _greatest;
    private int _topBefore;
    private int _topBeforeThat;

    /// <summary>Mean swing of the mains frequency alone, in sixteenths of a count, over the last whole stretch.</summary>
    public int Swing = FirstGuess;

    /// <summary>The same with its third harmonic: what the levels are compared with; 0 until there is a stretch.</summary>
    public int Level;

    /// <summary>
    /// Half of the power of the third harmonic as a part of that of the mains frequency, times 2^<see cref="ThirdParts"/>, over
    /// the last 0.2 s or so.
    /// </summary>
    public int Third;

    /// <summary>Greatest swing, with the third harmonic, of the last whole stretch; 0 until there is one.</summary>
    public int Top;

    /// <summary>Mean of <see cref="Top"/> of the last three stretches.</summary>
    public int MeanTop;

    /// <summary>Whether the last whole stretch was cut off at a rail.</summary>
    public bool IsClipped;

    /// <summary>Sum of the readings since it was last set to 0, in counts.</summary>
    public int Sum;

    /// <summary>Number of them.</summary>
    public int Count;

    /// <summary>
    /// A bucket above this is a step up, to be told without waiting for the end of the stretch; half of a power as
    /// <see cref="SwingWindow.PowerOf"/> gives it.
    /// </summary>
    public int HalfStepPower;

    /// <summary>Whether the last bucket showed such a step.</summary>
    public bool HasStepped;

    /// <summary>Begins afresh, at an onset.</summary>
    public void Begin()
    {
        _buckets = -LeftOut;
        HalfStepPower = int.MaxValue;
        HasStepped = false;
        Third = 0;
        BeginStretch();
    }

    /// <summary>Takes a bucket with a valid window.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <param name="window">The window.</param>
    /// <returns>True at the end of a stretch, and at a step up.</returns>
    public bool Add(Bucket bucket, SwingWindow window)
    {
        if (_buckets < 0)
        {
            _buckets++;
            return false;
        }

        int power = window.Power;
        int half = power - window.Squares;
        if (half > HalfStepPower)
        {
            HasStepped = true;
            return true;
        }

        _powerSum += power;
        if (power > _greatest)
        {
            _greatest = power;
        }

        _halfSum += half;
        Sum += bucket.Sum;
        _readings += bucket.Count;
        if (!bucket.IsOrdinary)
        {
            _clipped += bucket.AtLowRail + bucket.AtHighRail;
        }

        if (++_buckets < SwingWindow.Length)
        {
            return false;
        }

        Swing = SwingWindow.SwingOf((int)(2 * _halfSum / SwingWindow.Length), Swing);
        Level = SwingWindow.SwingOf((int)(_powerSum / SwingWindow.Length), Swing);
        int third = (int)(((_powerSum - (2 * _halfSum)) << ThirdParts) / ((2 * _halfSum) + 1));
        Third += (third - Third) >> ThirdShift;
        _topBeforeThat = _topBefore;
        _topBefore = Top;
        Top = SwingWindow.SwingOf(_greatest, Swing);
        MeanTop = (Top + _topBefore + _topBeforeThat) / 3;
        IsClipped = _clipped * 100 >= _readings * MuchClippedPercent && _clipped > 0;
        Count += _readings;
        _buckets = 0;
        BeginStretch();
        return true;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _buckets = tape.Number(_buckets);
        _powerSum = tape.Number(_powerSum);
        _halfSum = tape.Number(_halfSum);
        _clipped = tape.Number(_clipped);
        Swing = tape.Number(Swing);
        Level = tape.Number(Level);
        IsClipped = tape.Flag(IsClipped);
        Sum = tape.Number(Sum);
        Count = tape.Number(Count);
        _readings = tape.Number(_readings);
        HalfStepPower = tape.Number(HalfStepPower);
        _greatest = tape.Number(_greatest);
        _topBefore = tape.Number(_topBefore);
        _topBeforeThat = tape.Number(_topBeforeThat);
        Third = tape.Number(Third);
        Top = tape.Number(Top);
        MeanTop = tape.Number(MeanTop);
        HasStepped = tape.Flag(HasStepped);
    }

    private void BeginStretch()
    {
        _powerSum = 0;
        _halfSum = 0;
        _readings = 0;
        _clipped = 0;
        _greatest = 0;
    }
}
