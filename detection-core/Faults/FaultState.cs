namespace NanoDustSwitch.Detection;

/// <summary>What is known of one fault.</summary>
public sealed class FaultState
{
    /// <summary>Times a fault may come up within an hour before it stays until cleared.</summary>
    public const int TimesAnHour = 4;

    /// <summary>Figure of a fault that stood before a restart: what was seen then is not known any more.</summary>
    public const int FromBefore = int.MinValue;

    private const long Hour = 3600L * 1000000;

    private readonly long[] _raised = new long[TimesAnHour];
    private int _next;

    /// <summary>Whether the fault stands.</summary>
    public bool IsActive;

    /// <summary>Whether it stays until a person clears it.</summary>
    public bool IsLatched;

    /// <summary>When it came up, in microseconds.</summary>
    public long Since;

    /// <summary>When it was last seen, in microseconds.</summary>
    public long LastSeen;

    /// <summary>What was seen; its meaning depends on the fault.</summary>
    public int Figure;

    /// <summary>Times it has come up since the board did, or since it was cleared.</summary>
    public int Times;

    /// <summary>Notes that the fault has come up.</summary>
    /// <param name="figure">What was seen.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <param name="latchesWhenRepeated">Whether the fourth time in an hour makes it stay.</param>
    public void Raise(int figure, long now, bool latchesWhenRepeated)
    {
        IsActive = true;
        Since = now;
        LastSeen = now;
        Figure = figure;
        Times++;

        // Once this time is in, the next place of the ring holds the earliest of the last four.
        _raised[_next] = now;
        _next = _next + 1 == TimesAnHour ? 0 : _next + 1;
        if (latchesWhenRepeated && Times >= TimesAnHour && now - _raised[_next] <= Hour)
        {
            IsLatched = true;
        }
    }

    /// <summary>Forgets the fault and its history.</summary>
    public void Clear()
    {
        IsActive = false;
        IsLatched = false;
        Times = 0;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_raised);
        _next = tape.Number(_next);
        IsActive = tape.Flag(IsActive);
        IsLatched = tape.Flag(IsLatched);
        Since = tape.Number(Since);
        LastSeen = tape.Number(LastSeen);
        Figure = tape.Number(Figure);
        Times = tape.Number(Times);
    }
}
