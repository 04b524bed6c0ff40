namespace NanoDustSwitch.Detection;

/// <summary>Remembers when the switch started the vacuum, to count the automatic starts of the last minute.</summary>
public sealed class StartCounter
{
    /// <summary>How many starts it remembers: the most that it can count in a minute.</summary>
    public const int Most = 30;

    private readonly long[] _times = new long[Most];
    private int _next;

    /// <summary>Automatic starts since the board came up.</summary>
    public int Total;

    /// <summary>Notes an automatic start.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Add(long now)
    {
        _times[_next] = now;
        _next = _next + 1 == Most ? 0 : _next + 1;
        Total++;
    }

    /// <summary>Counts the starts of the last minute.</summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>Number of starts, 0 to <see cref="Most"/>.</returns>
    public int InLastMinute(long now)
    {
        int known = Total < Most ? Total : Most;
        int count = 0;
        for (int i = 0; i < known; i++)
        {
            if (now - _times[i] < Time.Minute)
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
