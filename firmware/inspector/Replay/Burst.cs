namespace NanoDustSwitch.Inspector.Replay;

/// <summary>Readings as they came, two cycles long: the shape of the current.</summary>
/// <param name="begin">Time from which its runs count, in microseconds since the boot.</param>
internal sealed class Burst(long begin)
{
    private readonly List<(double Microseconds, int Counts)> _readings = [];
    private double _next;
    private double _period;

    /// <summary>
    /// Gets the readings, each with the middle of the time in which it was taken; a negative count is a failed read.
    /// </summary>
    public IReadOnlyList<(double Microseconds, int Counts)> Readings => _readings;

    /// <summary>Begins a run without a hole.</summary>
    /// <param name="count">Number of its readings.</param>
    /// <param name="from">When it begins, in microseconds.</param>
    /// <param name="length">How long it is, in microseconds.</param>
    public void AddRun(int count, long from, long length)
    {
        _period = (double)length / Math.Max(1, count);
        _next = begin + from + (_period / 2);
    }

    /// <summary>Adds a reading to the run.</summary>
    /// <param name="counts">The reading in counts.</param>
    public void AddReading(int counts)
    {
        _readings.Add((_next, counts));
        _next += _period;
    }
}
