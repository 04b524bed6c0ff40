namespace NanoDustSwitch.Detection;

/// <summary>
/// The last decision before the relay: a fault keeps it open whatever is wanted, and after every opening it stays open for a
/// rest, so that a contact does not chatter and a motor is not started again at once.
/// </summary>
public sealed class RelayGate
{
    /// <summary>
    /// Longest time from the command to open until the contact is open, in microseconds; the rest begins only then. In the
    /// simulated circuit (hardware/circuits, HeartbeatDriverTests) the driver of a line that goes low holds the coil for 0.20 to
    /// 0.34 s over the tolerances of its parts, and for 0.42 s with capacitors and drain 20 % off; the contact takes up to 20 ms.
    /// </summary>
    public const long LongestHoldMicroseconds = 450 * Time.Millisecond;

    private long _openedAt;
    private long _restMicroseconds = LongestHoldMicroseconds;

    /// <summary>Whether the relay should be closed now.</summary>
    public bool IsClosed;

    /// <summary>Changes the length of the rest; it also holds for a rest that is under way.</summary>
    /// <param name="restMicroseconds">Shortest time for which the contact is open, in microseconds.</param>
    public void SetRest(long restMicroseconds)
    {
        _restMicroseconds = LongestHoldMicroseconds + restMicroseconds;
    }

    /// <summary>Decides for this bucket.</summary>
    /// <param name="wanted">Whether the vacuum control wants the vacuum.</param>
    /// <param name="isHeldOff">Whether a fault keeps the vacuum off.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Update(bool wanted, bool isHeldOff, long now)
    {
        if (wanted && !isHeldOff)
        {
            if (!IsClosed && now - _openedAt >= _restMicroseconds)
            {
                IsClosed = true;
            }
        }
        else if (IsClosed)
        {
            NoteOpening(now);
        }
    }

    /// <summary>
    /// Notes that the relay opens now, because we want it or because its heartbeat stopped for too long; the rest starts.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    public void NoteOpening(long now)
    {
        IsClosed = false;
        _openedAt = now;
    }

    /// <summary>
    /// Notes a stretch of time without buckets. What was decided just before it may have reached the relay only after it, so a
    /// rest that started there counts from its end.
    /// </summary>
    /// <param name="from">End of the bucket before it, in microseconds.</param>
    /// <param name="to">End of the bucket after it.</param>
    public void NoteGap(long from, long to)
    {
        if (_openedAt == from)
        {
            _openedAt = to;
        }
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        IsClosed = tape.Flag(IsClosed);
        _openedAt = tape.Number(_openedAt);
    }
}
