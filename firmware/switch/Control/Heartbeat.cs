using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Feeds the relay: while the vacuum should run the line toggles at every step, and the driver holds the relay only as
/// long as it does. A line stuck high or low, a hung or a booting board: the vacuum is off within a second.
/// </summary>
public sealed class Heartbeat
{
    /// <summary>Longest gap that the driver is sure to bridge, in microseconds.</summary>
    public const long LongestGapMicroseconds = 150 * Time.Millisecond;

    private readonly IBoard _board;
    private bool _level;
    private long _lastBeat;

    /// <summary>Whether the line toggles.</summary>
    public bool IsBeating;

    /// <summary>Initializes a new instance of the <see cref="Heartbeat"/> class and lets the line rest.</summary>
    /// <param name="board">The board.</param>
    public Heartbeat(IBoard board)
    {
        _board = board;
        Stop();
    }

    /// <summary>Lets the line rest.</summary>
    public void Stop()
    {
        IsBeating = false;
        _level = false;
        _board.SetRelayLine(false);
    }

    /// <summary>Beats once if the relay is to be closed, else lets the line rest.</summary>
    /// <param name="isClosed">Whether the relay should be closed.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>0, or the length in ms of a gap in which the driver may have let go; the line rests then.</returns>
    public int Update(bool isClosed, long now)
    {
        if (!isClosed)
        {
            Stop();
            return 0;
        }

        if (IsBeating && now - _lastBeat > LongestGapMicroseconds)
        {
            // The driver may have let go. Closing again is a start like any other, after the relay's rest.
            long gap = (now - _lastBeat) / Time.Millisecond;
            Stop();
            return gap > int.MaxValue ? int.MaxValue : (int)gap;
        }

        IsBeating = true;
        _lastBeat = now;
        _level = !_level;
        _board.SetRelayLine(_level);
        return 0;
    }
}
