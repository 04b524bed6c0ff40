namespace NanoDustSwitch.Detection;

/// <summary>Tells when a tool's start surge is over: when its one-cycle swing has fallen less than 5 % in 100 ms.</summary>
public sealed class SurgeWatch
{
    /// <summary>Buckets between the two swings that are compared: 100 ms.</summary>
    public const int Distance = 40;

    // The swing ripples a little with the place of the buckets on the cycle; a cycle's sum on either side evens it out.
    private const int Smoothing = SwingWindow.Length;
    private const int Length = Distance + Smoothing;

    // The surge's share that counts as fallen. A twentieth would be 5 %; the swing and its evening out look back over two
    // cycles, in which a surge that is nearly over falls by the rest.
    private const int Share = 17;

    /// <summary>Swing at the latest look, evened out over a cycle, in sixteenths of a count.</summary>
    public int Level;

    private readonly int[] _swings = new int[Length];
    private int _next;
    private int _seen;

    /// <summary>Begins watching, at the moment the tool is seen.</summary>
    public void Restart()
    {
        _next = 0;
        _seen = 0;
    }

    /// <summary>Takes the swing of a bucket with a valid window.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="noise">Floor of the noise in the same unit: a fall within it is no fall.</param>
    /// <returns>True when the last 100 ms showed no more fall than 5 %.</returns>
    public bool Accept(int swing, int noise)
    {
        _swings[_next] = swing;
        _next = _next + 1 == Length ? 0 : _next + 1;
        if (_seen < Length)
        {
            _seen++;
            if (_seen < Length)
            {
                return false;
            }
        }

        // With a full ring the next place holds the oldest swing.
        int then = 0;
        int now = 0;
        int oldest = _next;
        int newest = _next == 0 ? Length - 1 : _next - 1;
        for (int i = 0; i < Smoothing; i++)
        {
            then += _swings[oldest];
            now += _swings[newest];
            oldest = oldest + 1 == Length ? 0 : oldest + 1;
            newest = newest == 0 ? Length - 1 : newest - 1;
        }

        Level = now / Smoothing;
        int fallen = then - now;
        return fallen <= noise * Smoothing || fallen * Share < then;
    }
}
