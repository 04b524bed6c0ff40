namespace NanoDustSwitch.Detection;

/// <summary>Tells when a tool's start surge is over: when its one-cycle swing has fallen less than 5 % in 100 ms.</summary>
public sealed class SurgeWatch
{
    /// <summary>Buckets that are compared end to end: 100 ms.</summary>
    public const int Length = 40;

    // The surge's share that counts as fallen: a twentieth is 5 %.
    private const int Share = 20;

    private int _buckets;
    private int _first;
    private int _last;

    /// <summary>Begins watching, at the moment the tool is seen.</summary>
    public void Restart()
    {
        _buckets = 0;
        _first = 0;
        _last = 0;
    }

    /// <summary>Takes the swing of a bucket with a valid window.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="noise">Floor of the noise in the same unit: a fall within it is no fall.</param>
    /// <returns>True when the last 100 ms showed no more fall than 5 %.</returns>
    public bool Accept(int swing, int noise)
    {
        // The greatest of a cycle at either end, so that the place on the cycle does not matter.
        int at = _buckets++;
        if (at < SwingWindow.Length)
        {
            _first = swing > _first ? swing : _first;
        }
        else if (at >= Length - SwingWindow.Length)
        {
            _last = swing > _last ? swing : _last;
        }

        if (_buckets < Length)
        {
            return false;
        }

        int first = _first;
        int fallen = first - _last;
        Restart();
        return fallen <= noise || fallen * Share < first;
    }
}
