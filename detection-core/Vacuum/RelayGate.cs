namespace NanoDustSwitch.Detection;

/// <summary>The last gate before the relay: a fault closes it, and after every opening the relay rests for a while.</summary>
public sealed class RelayGate
{
    private long _openedAt;
    private long _restMicroseconds;

    /// <summary>Whether the relay should be closed now.</summary>
    public bool IsClosed;

    /// <summary>Starts the rest, as if the relay had opened now.</summary>
    /// <param name="now">Time in microseconds.</param>
    /// <param name="restMicroseconds">Shortest time between an opening and the next closing, in microseconds.</param>
    public void Restart(long now, long restMicroseconds)
    {
        IsClosed = false;
        _openedAt = now;
        _restMicroseconds = restMicroseconds;
    }

    /// <summary>Changes the rest without starting one.</summary>
    /// <param name="restMicroseconds">Shortest time between an opening and the next closing, in microseconds.</param>
    public void SetRest(long restMicroseconds)
    {
        _restMicroseconds = restMicroseconds;
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
            Lose(now);
        }
    }

    /// <summary>Notes that the relay has opened, by our will or because its heartbeat stopped for too long.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Lose(long now)
    {
        IsClosed = false;
        _openedAt = now;
    }

    /// <summary>Notes a stretch of time without buckets: what was decided at its beginning reached the relay perhaps only at its end, so a rest that began there counts from its end.</summary>
    /// <param name="from">End of the bucket before it, in microseconds.</param>
    /// <param name="to">End of the bucket after it.</param>
    public void Bridge(long from, long to)
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
