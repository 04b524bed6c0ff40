namespace NanoDustSwitch.Detection;

/// <summary>Tells when a tool's start surge is over: when its current at mains frequency hardly falls any more.</summary>
/// <remarks>
/// The mean swings of the last five stretches of 20 ms are compared; a window that is not quite a cycle ripples, and the mean hardly does.
/// As long as none is above the one before, and the last a twenty-fifth below the first, it is a surge. But
/// narrow pulses fall into and out of the holes between the readings: a fall that came all at once is none, nor is one with a rise in it.
/// What comes back is no surge; a surge falls and falls. A surge that clips shows the same swing until it is small enough; there the share
/// of the readings at a rail tells, which falls as the surge does.
/// </remarks>
public sealed class SurgeWatch
{
    /// <summary>Buckets until the first answer: 115 ms.</summary>
    public const int Length = (Stretches * SwingWindow.Length) + LeftOut;

    /// <summary>Buckets left out at first: the tool's first cycle may be half a one, and the window is still filling. What it shows is no measure of the surge.</summary>
    public const int LeftOut = SwingWindow.Length * 3 / 4;

    private const int Stretches = 5;

    // 5 % in 100 ms, the plan's figure: a twenty-fifth of the swing in the 80 ms from the first stretch to the last.
    private const int Share = 25;

    // Of a current that stays the means of 20 ms are alike to about a thirtieth.
    private const int Rise = 28;

    // Of a hundred readings so many at a rail leave little of the swing's top; so many fewer than before are a fall.
    private const int Whole = 100;
    private const int MuchClipped = 15;
    private const int LessClipped = 2;

    // A tool that shows no more than so many times the noise has no surge that matters to anything.
    private const int TimesNoise = 5;

    // A climb by a sixteenth over three stretches is a soft start's.
    private const int LeastToRise = 3;
    private const int Climb = 16;

    /// <summary>Mean swing of the last stretch, in sixteenths of a count; of the latest look while there is none.</summary>
    public int Level;

    private readonly int[] _means = new int[Stretches];
    private readonly int[] _share = new int[Stretches];
    private int _filled;
    private int _buckets = -LeftOut;
    private int _stretch;
    private int _sum;
    private int _readings;
    private int _clipped;

    /// <summary>Begins watching, at the moment the tool is seen.</summary>
    public void Restart()
    {
        _filled = 0;
        _buckets = -LeftOut;
        _stretch = 0;
        _sum = 0;
        _readings = 0;
        _clipped = 0;
        Level = 0;
    }

    /// <summary>Takes the swing of a bucket with a valid window.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="fundamental">That of the mains frequency alone, by which the fall is judged.</param>
    /// <param name="noise">Floor of the noise in the same unit: a fall within it is no fall.</param>
    /// <returns>True when the last 100 ms showed no fall worth the name; an answer every 20 ms.</returns>
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

        _sum += swing;
        _stretch += fundamental;
        _readings += bucket.Count;
        _clipped += bucket.AtLowRail + bucket.AtHighRail;
        if (++_buckets < SwingWindow.Length)
        {
            return false;
        }

        for (int i = 1; i < Stretches; i++)
        {
            _means[i - 1] = _means[i];
            _share[i - 1] = _share[i];
        }

        Level = _sum / SwingWindow.Length;
        _sum = 0;
        _means[Stretches - 1] = _stretch / SwingWindow.Length;
        _share[Stretches - 1] = _clipped == 0 ? 0 : _clipped * Whole / _readings;
        _stretch = 0;
        _readings = 0;
        _clipped = 0;
        _buckets = 0;
        if (_filled < Stretches)
        {
            _filled++;
        }

        return _filled == Stretches ? !IsFalling(noise) : IsRising();
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_means);
        tape.Numbers(_share);
        _filled = tape.Number(_filled);
        _buckets = tape.Number(_buckets);
        _stretch = tape.Number(_stretch);
        _sum = tape.Number(_sum);
        _readings = tape.Number(_readings);
        _clipped = tape.Number(_clipped);
        Level = tape.Number(Level);
    }

    // A soft start climbs; there is no surge to wait for.
    private bool IsRising()
    {
        int first = _means[Stretches - _filled];
        return _filled >= LeastToRise && _means[Stretches - 1] - first > first / Climb;
    }

    private bool IsFalling(int noise)
    {
        if (_share[0] >= MuchClipped && _share[0] - _share[Stretches - 1] >= LessClipped)
        {
            return true;
        }

        int first = _means[0];
        int fallen = first - _means[Stretches - 1];
        if (first <= noise * TimesNoise || fallen <= noise || fallen * Share < first)
        {
            return false;
        }

        for (int i = 1; i < Stretches; i++)
        {
            bool rose = _share[i - 1] == 0 && _means[i] > _means[i - 1] + (_means[i - 1] / Rise);
            bool fellAtOnce = (_means[i - 1] - _means[i]) * 8 > fallen * 7;
            if (rose || fellAtOnce)
            {
                return false;
            }
        }

        return true;
    }
}
