namespace NanoDustSwitch.Detection;

/// <summary>Remembers when the vacuum was started, to count the starts of a time that has just passed.</summary>
public sealed class StartCounter
{
    private readonly long[] _times;
    private readonly long _period;
    private int _next;

    /// <summary>Starts since the board came up.</summary>
    public int Total;

    /// <summary>Initializes a new instance of the <see cref="StartCounter"/> class.</summary>
    /// <param name="most">How many starts it remembers, and so the most that it can count.</param>
    /// <param name="period">For how long a start counts, in microseconds.</param>
    public StartCounter(int most, long period)
    {
        _times = new long[most];
        _period = period;
    }

    /// <summary>Notes a start.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Add(long now)
    {
        _times[_next] = now;
        _next = _next + 1 == _times.Length ? 0 : _next + 1;
        Total++;
    }

    /// <summary>Counts the starts of the time that has just passed.</summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>Number of starts, 0 to the most that it remembers.</returns>
    public int Recent(long now)
    {
        int known = Total < _times.Length ? Total : _times.Length;
        int count = 0;
        for (int i = 0; i < known; i++)
        {
            if (now - _times[i] < _period)
            {
                count++;
            }
        }

        return count;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_times);
        _next = tape.Number(_next);
        Total = tape.Number(Total);
    }
}
