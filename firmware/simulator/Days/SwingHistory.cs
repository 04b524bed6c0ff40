namespace NanoDustSwitch.Simulator.Days;

/// <summary>Swings of the last moments, to be compared with those of a little later.</summary>
internal sealed class SwingHistory
{
    // Steps of a board end on a grid of 2.5 ms, so that 128 looks reach back over more than 200 ms at any pace.
    private const int Length = 128;

    private readonly long[] _times = new long[Length];
    private readonly double[] _swings = new double[Length];
    private int _count;

    /// <summary>Takes a swing.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <param name="swing">Peak-to-peak current in A.</param>
    public void Add(long now, double swing)
    {
        _times[_count % Length] = now;
        _swings[_count % Length] = swing;
        _count++;
    }

    /// <summary>Gives the latest swing at or before a time.</summary>
    /// <param name="time">Shop time in microseconds.</param>
    /// <returns>Swing in A; where the time lies before all that is known, the earliest.</returns>
    public double At(long time)
    {
        int earliest = Math.Max(0, _count - Length);
        int at = _count - 1;
        while (at > earliest && _times[at % Length] > time)
        {
            at--;
        }

        return at < 0 ? 0 : _swings[at % Length];
    }
}
