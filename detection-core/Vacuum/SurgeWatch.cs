namespace NanoDustSwitch.Detection;

/// <summary>
/// Tells when a tool's start surge is over, which is when its current at mains frequency hardly falls any more.
/// </summary>
/// <remarks>
/// The mean swings of the last five stretches of 20 ms are compared. A window that is not quite a cycle ripples, and a mean
/// over 20 ms hardly does. The surge goes on as long as the last mean is at least a twenty-fifth below the first one. But a fall
/// that came all at once, or with a rise in it, is no surge: narrow pulses of current fall into and out of the holes between the
/// readings, so that their swing jumps down and comes back, while a surge falls steadily. A surge so large that its readings
/// stand at a rail shows the same swing until it has become smaller. There the share of the readings at a rail tells, which falls
/// with it.
/// </remarks>
public sealed class SurgeWatch
{
    /// <summary>
    /// Buckets that are left out after the start: the tool's first cycle may be half a one, and the window still holds some of
    /// the time before it, so their swing is no measure of the surge.
    /// </summary>
    public const int LeftOut = SwingWindow.Length * 3 / 4;

    private const int Stretches = 5;

    // A fall by 5 % in 100 ms, a choice of our own: a twenty-fifth of the swing in the 80 ms from the first stretch to the last.
    private const int LeastFall = 25;

    // A swing that stays the same gives means that differ by up to a thirtieth. One that is a twenty-eighth above the one
    // before has risen.
    private const int LeastRise = 28;

    // Where this many percent of the readings stand at a rail, the top of the current is cut off and its swing says nothing.
    // Then a share that has gone down by this much tells that the current falls.
    private const int MuchClippedPercent = 15;
    private const int LeastClippedFallPercent = 2;

    // A tool that shows no more than this many times the noise has no surge that matters.
    private const int TimesNoise = 5;

    // A swing that climbs by a sixteenth within three stretches is a soft start.
    private const int StretchesToClimb = 3;
    private const int LeastClimb = 16;

    /// <summary>Mean swing of the last stretch, in sixteenths of a count; before there is one, the latest swing.</summary>
    public int Level;

    /// <summary>Greatest swing of the last stretch, in sixteenths of a count; 0 before there is one.</summary>
    public int Top;

    /// <summary>Mean of <see cref="Top"/> of the last three stretches.</summary>
    public int MeanTop;

    private readonly int[] _means = new int[Stretches];
    private readonly int[] _clippedPercent = new int[Stretches];
    private int _filled;
    private int _buckets = -LeftOut;
    private int _fundamentalSum;
    private int _swingSum;
    private int _greatest;
    private int _topBefore;
    private int _topBeforeThat;
    private int _readings;
    private int _clipped;

    /// <summary>Starts afresh, at the moment when the tool is seen.</summary>
    public void Reset()
    {
        _filled = 0;
        _buckets = -LeftOut;
        _fundamentalSum = 0;
        _swingSum = 0;
        _greatest = 0;
        _topBefore = 0;
        _topBeforeThat = 0;
        _readings = 0;
        _clipped = 0;
        Level = 0;
        Top = 0;
        MeanTop = 0;
    }

    /// <summary>Takes the swing of a bucket with a valid window.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="fundamental">Swing of the mains frequency alone, by which the fall is judged.</param>
    /// <param name="noise">Noise floor in the same unit: a fall of no more than this is none.</param>
    /// <returns>
    /// True when the last 100 ms showed no fall, which is told every 20 ms from 115 ms on. For a soft start it is true from 75 ms
    /// on.
    /// </returns>
    public bool Accept(Bucket bucket, int swing, int fundamental, int noise)
    {
        if (_filled == 0)
        {
            Level = swing;
        }

        if (_buckets < 0)
        {
            _buckets++;
            return false;
        }

        _swingSum += swing;
        _greatest = swing > _greatest ? swing : _greatest;
        _fundamentalSum += fundamental;
        _readings += bucket.Count;
        _clipped += bucket.AtLowRail + bucket.AtHighRail;
        if (++_buckets < SwingWindow.Length)
        {
            return false;
        }

        for (int i = 1; i < Stretches; i++)
        {
            _means[i - 1] = _means[i];
            _clippedPercent[i - 1] = _clippedPercent[i];
        }

        Level = _swingSum / SwingWindow.Length;
        _swingSum = 0;
        _topBeforeThat = _topBefore;
        _topBefore = Top;
        Top = _greatest;
        MeanTop = (Top + _topBefore + _topBeforeThat) / 3;
        _greatest = 0;
        _means[Stretches - 1] = _fundamentalSum / SwingWindow.Length;
        _clippedPercent[Stretches - 1] = _clipped == 0 ? 0 : _clipped * 100 / _readings;
        _fundamentalSum = 0;
        _readings = 0;
        _clipped = 0;
        _buckets = 0;
        if (_filled < Stretches)
        {
            _filled++;
        }

        return _filled == Stretches ? !IsFalling(noise) : IsClimbing();
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_means);
        tape.Numbers(_clippedPercent);
        _filled = tape.Number(_filled);
        _buckets = tape.Number(_buckets);
        _fundamentalSum = tape.Number(_fundamentalSum);
        _swingSum = tape.Number(_swingSum);
        _greatest = tape.Number(_greatest);
        _topBefore = tape.Number(_topBefore);
        _topBeforeThat = tape.Number(_topBeforeThat);
        _readings = tape.Number(_readings);
        _clipped = tape.Number(_clipped);
        Level = tape.Number(Level);
        Top = tape.Number(Top);
        MeanTop = tape.Number(MeanTop);
    }

    // The current of a soft start climbs, so there is no surge to wait for.
    private bool IsClimbing()
    {
        int first = _means[Stretches - _filled];
        return _filled >= StretchesToClimb && _means[Stretches - 1] - first > first / LeastClimb;
    }

    private bool IsFalling(int noise)
    {
        if (_clippedPercent[0] >= MuchClippedPercent
            && _clippedPercent[0] - _clippedPercent[Stretches - 1] >= LeastClippedFallPercent)
        {
            return true;
        }

        int first = _means[0];
        int fallen = first - _means[Stretches - 1];
        if (first <= noise * TimesNoise || fallen <= noise || fallen * LeastFall < first)
        {
            return false;
        }

        for (int i = 1; i < Stretches; i++)
        {
            // A clipped stretch shows too small a swing, and what follows it seems to rise.
            bool rose = _clippedPercent[i - 1] == 0 && _means[i] > _means[i - 1] + (_means[i - 1] / LeastRise);
            bool fellAtOnce = (_means[i - 1] - _means[i]) * 8 > fallen * 7;
            if (rose || fellAtOnce)
            {
                return false;
            }
        }

        return true;
    }
}
