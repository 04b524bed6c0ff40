namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Gives back what a current was a while ago, up to a cycle of 45 Hz.</summary>
/// <param name="microseconds">How long ago, above 0.</param>
internal sealed class DelayLine(double microseconds)
{
    // A cycle at 45 Hz and 40,000 readings a second; a power of two, so that the ring's end is a mask.
    private const int Size = 1024;
    private const int Mask = Size - 1;

    private readonly long[] _times = new long[Size];
    private readonly double[] _amperes = new double[Size];
    private int _last;
    private int _at;

    /// <summary>Takes a value in.</summary>
    /// <param name="now">Virtual time, µs, later than the last.</param>
    /// <param name="amperes">Current, A.</param>
    /// <returns>What it was then, A, on the line between two values; the earliest known where it is longer ago.</returns>
    public double Pass(long now, double amperes)
    {
        _last = (_last + 1) & Mask;
        _times[_last] = now;
        _amperes[_last] = amperes;
        if (_at == _last)
        {
            _at = (_at + 1) & Mask;
        }

        double then = now - microseconds;
        int next = (_at + 1) & Mask;
        while (_at != _last && _times[next] <= then)
        {
            _at = next;
            next = (next + 1) & Mask;
        }

        double earlier = _amperes[_at];
        double width = _at == _last ? 0 : _times[next] - _times[_at];
        return width <= 0 ? earlier : earlier + ((_amperes[next] - earlier) * Math.Clamp((then - _times[_at]) / width, 0, 1));
    }
}
