using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Toggles the relay's line at every step while the relay is to be closed. The driver holds the relay only as long as the line
/// toggles. So when the line is stuck high or low, or the board hangs or boots, the vacuum goes off within a second.
/// </summary>
public sealed class Heartbeat
{
    /// <summary>
    /// Longest pause between two beats, in microseconds, over which every driver holds the relay, whatever the tolerance of its
    /// parts.
    /// </summary>
    public const long LongestGapMicroseconds = 150 * Time.Millisecond;

    private readonly IBoard _board;
    private bool _level;
    private long _lastBeat;

    /// <summary>Whether the line is toggling.</summary>
    public bool IsBeating;

    /// <summary>Initializes a new instance of the <see cref="Heartbeat"/> class and lets the line rest.</summary>
    /// <param name="board">The board.</param>
    public Heartbeat(IBoard board)
    {
        _board = board;
        Stop();
    }

    /// <summary>Stops toggling and puts the line low.</summary>
    public void Stop()
    {
        IsBeating = false;
        _level = false;
        _board.SetRelayLine(false);
    }

    /// <summary>
    /// Toggles the line once if the relay is to be closed, and otherwise lets it rest. To be called at every step.
    /// </summary>
    /// <param name="isClosed">Whether the relay should be closed.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>0 as a rule. When the last beat was too long ago, so that the driver may have dropped the relay: the length of
    /// the pause in ms. The line then rests.</returns>
    public int Update(bool isClosed, long now)
    {
        if (!isClosed)
        {
            Stop();
            return 0;
        }

        if (IsBeating && now - _lastBeat > LongestGapMicroseconds)
        {
            // The driver may have dropped the relay, so take it for open. Like after any opening, it may close again only after
            // it has been open for restart-gap.
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
