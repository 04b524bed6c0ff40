namespace NanoDustSwitch.Inspector.Port;

/// <summary>The greatest swing of each of the last seconds, and whether the vacuum was on in it.</summary>
internal sealed class WatchHistory
{
    private const int Most = 600;

    private readonly List<(double Swing, bool IsVacuumOn)> _seconds = [];
    private long _second = long.MinValue;

    /// <summary>Takes a line.</summary>
    /// <param name="line">The line.</param>
    public void Add(WatchLine line)
    {
        long second = (long)line.Seconds;
        if (second == _second)
        {
            _seconds[^1] = (Math.Max(_seconds[^1].Swing, line.Swing), _seconds[^1].IsVacuumOn || line.IsVacuumOn);
            return;
        }

        // Without the board nothing is known, so that those seconds stay empty; after a restart it counts from nought.
        for (long lost = Math.Min(second - _second - 1, Most); lost > 0 && _second >= 0; lost--)
        {
            _seconds.Add((0, false));
        }

        _seconds.Add((line.Swing, line.IsVacuumOn));
        _seconds.RemoveRange(0, Math.Max(0, _seconds.Count - Most));
        _second = second;
    }

    /// <summary>Gives the last seconds.</summary>
    /// <param name="count">How many at most.</param>
    /// <returns>Them, the last one at the end.</returns>
    public IReadOnlyList<(double Swing, bool IsVacuumOn)> Last(int count) => _seconds[Math.Max(0, _seconds.Count - count)..];
}
