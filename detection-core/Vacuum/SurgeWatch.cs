namespace NanoDustSwitch.Detection;

/// <summary>Tells when a tool's start surge is over: when its one-cycle swing hardly falls any more.</summary>
public sealed class SurgeWatch
{
    /// <summary>Buckets that are looked at, from the first cycle to the last: 100 ms.</summary>
    public const int Length = 40;

    // The greatest swing of a cycle at either end: the swing ripples with the place of the buckets on the cycle, and in the first
    // cycle after the tool is seen its window is still filling.
    private const int Cycle = SwingWindow.Length;

    // The surge's share that counts as fallen: a twelfth in the 80 ms between the two ends. 5 % in 100 ms would be half of that, but
    // near 50 Hz the ripple comes and goes so slowly that it looks like a fall of 5 % by itself.
    private const int Share = 12;

    /// <summary>Greatest swing of the last cycle, in sixteenths of a count; of the latest look while there is no more.</summary>
    public int Level;

    private readonly int[] _swings = new int[Length];
    private int _next;
    private int _seen;

    /// <summary>Begins watching, at the moment the tool is seen.</summary>
    public void Restart()
    {
        _next = 0;
        _seen = 0;
        Level = 0;
    }

    /// <summary>Takes the swing of a bucket with a valid window.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="noise">Floor of the noise in the same unit: a fall within it is no fall.</param>
    /// <returns>True when the last 100 ms showed no fall worth the name.</returns>
    public bool Accept(int swing, int noise)
    {
        _swings[_next] = swing;
        _next = _next + 1 == Length ? 0 : _next + 1;
        if (_seen < Length)
        {
            _seen++;
            if (_seen < Length)
            {
                Level = swing;
                return false;
            }
        }

        // With a full ring the next place holds the oldest swing.
        int then = 0;
        int now = 0;
        int least = int.MaxValue;
        int oldest = _next;
        int newest = _next == 0 ? Length - 1 : _next - 1;
        for (int i = 0; i < Cycle; i++)
        {
            then = _swings[oldest] > then ? _swings[oldest] : then;
            now = _swings[newest] > now ? _swings[newest] : now;
            least = _swings[newest] < least ? _swings[newest] : least;
            oldest = oldest + 1 == Length ? 0 : oldest + 1;
            newest = newest == 0 ? Length - 1 : newest - 1;
        }

        Level = now;
        int fallen = then - now;

        // Narrow pulses fall into and out of the holes between the readings, and the swing ripples by far more than that: a fall
        // within the ripple of the last cycle is no fall either.
        return fallen <= noise || fallen * Share < then || fallen <= now - least;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_swings);
        _next = tape.Number(_next);
        _seen = tape.Number(_seen);
        Level = tape.Number(Level);
    }
}
