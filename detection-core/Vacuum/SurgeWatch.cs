namespace NanoDustSwitch.Detection;

/// <summary>Tells when a tool's start surge is over: when its one-cycle swing hardly falls any more.</summary>
/// <remarks>
/// The greatest swings of the last five stretches of 20 ms are compared: as long as each is below the one before, and the last a
/// twelfth below the first, it is a surge. 5 % in 100 ms, the plan's figure, is about half of that; but near 50 Hz the swing
/// ripples so slowly that it looks like a fall of 5 % by itself, and narrow pulses fall into and out of the holes between the
/// readings. A ripple comes back; a surge falls and falls.
/// </remarks>
public sealed class SurgeWatch
{
    /// <summary>Buckets that are looked at: 100 ms.</summary>
    public const int Length = Stretches * SwingWindow.Length;

    private const int Stretches = 5;
    private const int Share = 12;

    /// <summary>Greatest swing of the last stretch, in sixteenths of a count; of the latest look while there is none.</summary>
    public int Level;

    private readonly int[] _greatest = new int[Stretches];
    private int _filled;
    private int _buckets;
    private int _stretch;

    /// <summary>Begins watching, at the moment the tool is seen.</summary>
    public void Restart()
    {
        _filled = 0;
        _buckets = 0;
        _stretch = 0;
        Level = 0;
    }

    /// <summary>Takes the swing of a bucket with a valid window.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="noise">Floor of the noise in the same unit: a fall within it is no fall.</param>
    /// <returns>True when the last 100 ms showed no fall worth the name; an answer every 20 ms.</returns>
    public bool Accept(int swing, int noise)
    {
        if (_filled == 0)
        {
            Level = swing;
        }

        _stretch = swing > _stretch ? swing : _stretch;
        if (++_buckets < SwingWindow.Length)
        {
            return false;
        }

        for (int i = 1; i < Stretches; i++)
        {
            _greatest[i - 1] = _greatest[i];
        }

        _greatest[Stretches - 1] = _stretch;
        Level = _stretch;
        _stretch = 0;
        _buckets = 0;
        if (_filled < Stretches)
        {
            _filled++;
        }

        return _filled == Stretches && !IsFalling(noise);
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_greatest);
        _filled = tape.Number(_filled);
        _buckets = tape.Number(_buckets);
        _stretch = tape.Number(_stretch);
        Level = tape.Number(Level);
    }

    private bool IsFalling(int noise)
    {
        int first = _greatest[0];
        int fallen = first - _greatest[Stretches - 1];
        if (fallen <= noise || fallen * Share < first)
        {
            return false;
        }

        for (int i = 1; i < Stretches; i++)
        {
            if (_greatest[i] >= _greatest[i - 1])
            {
                return false;
            }
        }

        return true;
    }
}
