namespace NanoDustSwitch.Detection;

/// <summary>
/// A look: the relay is open for a moment. Does the current go with it? What a contact switches off goes all at once, between
/// the shortest and the longest time that driver and contact take, and stays away.
/// </summary>
public sealed class RelayLook
{
    /// <summary>Most by which the delays of two looks may differ, in microseconds.</summary>
    public const long SameMicroseconds = 15000;

    // When the contact can open after the command. Before the first time the driver still holds the relay in any case. By the
    // second it has let go and the contact has opened, also with parts that are 20 % off.
    private const long SoonestOpenMicroseconds = Bucket.Microseconds * 60L;
    private const long LatestOpenMicroseconds = 600000;

    // From full current to less than half: the time of a contact that opens, and a cycle until the window shows it.
    private const long GoMicroseconds = 45000;

    // The current must stay away for so long.
    private const long GoneMicroseconds = 300000;

    // What has stayed changes by less than a quarter.
    private const int StayShift = 2;

    // When the swing was last near its level, and when it fell below half of it (-1 until then).
    private long _fullAt;
    private long _goneAt = -1;

    // The change of the current over 100 ms: the first one, for which the contact cannot have opened, shows by how much the
    // mains frequency is off; -1 until it is known. Then the greatest of the others, and when the last one was taken.
    private readonly Phasor _phasor = new Phasor();
    private int _turn;
    private int _change;
    private long _changedAt;

    /// <summary>When it began, in microseconds; long ago until there has been a look.</summary>
    public long Since = -Time.Hour;

    /// <summary>Swing at its beginning, in sixteenths of a count; 0 until there has been a look.</summary>
    public int Level;

    /// <summary>How it ended: how long after the command the current went, in microseconds; -1 when it did not.</summary>
    public long Lag = -1;

    /// <summary>How it ended: whether the current was the same as before, so that none of it is the vacuum's.</summary>
    public bool HasStayed;

    /// <summary>Begins a look.</summary>
    /// <param name="level">Swing in sixteenths of a count.</param>
    /// <param name="window">The window, which is valid.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Begin(int level, SwingWindow window, long now)
    {
        Level = level;
        Since = now;
        _fullAt = now;
        _goneAt = -1;
        _phasor.Take(window);
        _turn = -1;
        _change = 0;
        _changedAt = now;
        HasStayed = false;
    }

    /// <summary>Takes a bucket.</summary>
    /// <param name="window">The window with this bucket in it.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>True when the look is over.</returns>
    public bool IsOver(SwingWindow window, long now)
    {
        if (!window.IsValid)
        {
            // It may go now, and nobody sees it.
            _fullAt = _goneAt < 0 ? now : _fullAt;
            return now - Since >= LatestOpenMicroseconds && End(-1);
        }

        int swing = window.Swing;
        bool isHalf = swing < Level >> 1;
        if (_goneAt >= 0 && isHalf)
        {
            return now - _goneAt >= GoneMicroseconds && End(_goneAt - Since);
        }

        if (_goneAt >= 0)
        {
            // While it goes, what the window shows of it may rise once more.
            if (now - _fullAt > GoMicroseconds)
            {
                return End(-1);
            }

            _goneAt = -1;
        }

        if (swing >= Level - (Level >> 2))
        {
            _fullAt = now;
        }
        else if (isHalf)
        {
            if (now - _fullAt > GoMicroseconds || now - Since < SoonestOpenMicroseconds)
            {
                return End(-1);
            }

            _goneAt = now;
        }

        if (now - _changedAt >= Phasor.Step)
        {
            NoteChange(window, now);
        }

        if (now - Since < LatestOpenMicroseconds)
        {
            return false;
        }

        HasStayed = _turn >= 0 && _turn < Level >> 1 && _change - _turn < Level >> StayShift;
        return End(-1);
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _fullAt = tape.Number(_fullAt);
        _goneAt = tape.Number(_goneAt);
        _phasor.Exchange(tape);
        _turn = tape.Number(_turn);
        _change = tape.Number(_change);
        _changedAt = tape.Number(_changedAt);
        Since = tape.Number(Since);
        Level = tape.Number(Level);
        Lag = tape.Number(Lag);
        HasStayed = tape.Flag(HasStayed);
    }

    private bool End(long lag)
    {
        Lag = lag;
        return true;
    }

    private void NoteChange(SwingWindow window, long now)
    {
        int change = _phasor.Move(window);
        bool isComparable = now - _changedAt == Phasor.Step;
        _changedAt = now;
        if (!isComparable)
        {
            _change = int.MaxValue;
        }
        else if (_turn < 0)
        {
            _turn = change;
        }
        else if (change > _change)
        {
            _change = change;
        }
    }
}
