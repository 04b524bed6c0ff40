namespace NanoDustSwitch.Detection;

/// <summary>Tells when a tool's start surge is over: when its one-cycle swing hardly falls any more.</summary>
/// <remarks>
/// The greatest swings of the last five stretches of 20 ms are compared: as long as none is above the one before, and the last a
/// twelfth below the first, it is a surge. 5 % in 100 ms, the plan's figure, is about half of that; but near 50 Hz the swing
/// ripples so slowly that it looks like a fall of 5 % by itself, and narrow pulses fall into and out of the holes between the
/// readings: a fall within the ripple of one stretch is none, nor is one that came all at once. A ripple comes back; a surge falls and falls. A surge that clips
/// shows the same swing until it is small enough; there the share of the readings at a rail tells, which falls as the surge does.
/// </remarks>
public sealed class SurgeWatch
{
    /// <summary>Buckets until the first answer: 105 ms.</summary>
    public const int Length = (Stretches * SwingWindow.Length) - LeftOut;

    private const int Stretches = 5;

    // A twelfth of the swing in the 80 ms from the first stretch to the last.
    private const int Share = 12;

    // At 60 Hz the greatest swings of 20 ms are alike to about a sixtieth.
    private const int Rise = 64;

    // Of a hundred readings so many at a rail leave little of the swing's top; so many fewer than before are a fall.
    private const int Whole = 100;
    private const int MuchClipped = 15;
    private const int LessClipped = 2;

    // A tool that shows no more than so many times the noise has no surge that matters to anything.
    private const int TimesNoise = 5;

    // A climb by a sixteenth over three stretches is a soft start's.
    private const int LeastToRise = 3;
    private const int Climb = 16;

    // The tool's first cycle may be half a one, and the window is still filling: what it shows is no measure of the surge.
    private const int LeftOut = -SwingWindow.Length / 4;

    /// <summary>Greatest swing of the last stretch, in sixteenths of a count; of the latest look while there is none.</summary>
    public int Level;

    private readonly int[] _greatest = new int[Stretches];
    private readonly int[] _ripple = new int[Stretches];
    private readonly int[] _share = new int[Stretches];
    private int _filled;
    private int _buckets = LeftOut;
    private int _stretch;
    private int _least = int.MaxValue;
    private int _readings;
    private int _clipped;

    /// <summary>Begins watching, at the moment the tool is seen.</summary>
    public void Restart()
    {
        _filled = 0;
        _buckets = LeftOut;
        _stretch = 0;
        _least = int.MaxValue;
        _readings = 0;
        _clipped = 0;
        Level = 0;
    }

    /// <summary>Takes the swing of a bucket with a valid window.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="noise">Floor of the noise in the same unit: a fall within it is no fall.</param>
    /// <returns>True when the last 100 ms showed no fall worth the name; an answer every 20 ms.</returns>
    public bool Accept(Bucket bucket, int swing, int noise)
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

        _stretch = swing > _stretch ? swing : _stretch;
        _least = swing < _least ? swing : _least;
        _readings += bucket.Count;
        _clipped += bucket.AtLowRail + bucket.AtHighRail;
        if (++_buckets < SwingWindow.Length)
        {
            return false;
        }

        for (int i = 1; i < Stretches; i++)
        {
            _greatest[i - 1] = _greatest[i];
            _ripple[i - 1] = _ripple[i];
            _share[i - 1] = _share[i];
        }

        Level = _stretch;
        _ripple[Stretches - 1] = _stretch - _least;
        _greatest[Stretches - 1] = _stretch;
        _share[Stretches - 1] = _clipped == 0 ? 0 : _clipped * Whole / _readings;
        _stretch = 0;
        _least = int.MaxValue;
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
        tape.Numbers(_greatest);
        tape.Numbers(_ripple);
        tape.Numbers(_share);
        _filled = tape.Number(_filled);
        _buckets = tape.Number(_buckets);
        _stretch = tape.Number(_stretch);
        _least = tape.Number(_least);
        _readings = tape.Number(_readings);
        _clipped = tape.Number(_clipped);
        Level = tape.Number(Level);
    }

    // A soft start climbs; there is no surge to wait for.
    private bool IsRising()
    {
        int first = _greatest[Stretches - _filled];
        return _filled >= LeastToRise && _greatest[Stretches - 1] - first > first / Climb;
    }

    private bool IsFalling(int noise)
    {
        if (_share[0] >= MuchClipped)
        {
            return _share[0] - _share[Stretches - 1] >= LessClipped;
        }

        // In the first stretch the window may still be filling.
        int first = _greatest[0] > _greatest[1] ? _greatest[0] : _greatest[1];
        int fallen = first - _greatest[Stretches - 1];
        if (first <= noise * TimesNoise || fallen <= noise || fallen * Share < first)
        {
            return false;
        }

        for (int i = 2; i < Stretches; i++)
        {
            bool rose = _share[i - 1] == 0 && _greatest[i] > _greatest[i - 1] + (_greatest[i - 1] / Rise);
            bool fellAtOnce = (_greatest[i - 1] - _greatest[i]) * 8 > fallen * 7;
            if (rose || fellAtOnce || fallen <= _ripple[i])
            {
                return false;
            }
        }

        return true;
    }
}
