namespace NanoDustSwitch.Detection;

/// <summary>What is known of one fault.</summary>
public sealed class FaultState
{
    /// <summary>A fault that comes up so many times within an hour stays until a person clears it, if its row says so.</summary>
    public const int TimesAnHour = 4;

    /// <summary>Figure of a fault that was recalled after a restart: what was seen before is not kept.</summary>
    public const int FromBefore = int.MinValue;

    private const long HourMicroseconds = Time.Hour;

    // The last four times at which it came up: a ring.
    private readonly long[] _raised = new long[TimesAnHour];
    private int _next;

    /// <summary>Whether the fault stands: it was seen and has not ended.</summary>
    public bool IsActive;

    /// <summary>Whether it stays until a person clears it.</summary>
    public bool IsLatched;

    /// <summary>When it came up, in microseconds.</summary>
    public long Since;

    /// <summary>When it was last seen, in microseconds.</summary>
    public long LastSeen;

    /// <summary>What was seen as it came up: a number whose meaning depends on the fault.</summary>
    public int Figure;

    /// <summary>How many times it has come up since the boot, or since a person cleared it.</summary>
    public int Times;

    /// <summary>Notes that the fault has come up.</summary>
    /// <param name="figure">What was seen.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <param name="traits">Its row in the table, for how it ends.</param>
    public void Raise(int figure, long now, FaultTraits traits)
    {
        IsActive = true;
        Since = now;
        LastSeen = now;
        Figure = figure;
        Times++;

        // Once this time is in, the next place of the ring holds the earliest of the last four.
        _raised[_next] = now;
        _next = _next + 1 == TimesAnHour ? 0 : _next + 1;
        bool isRepeated = Times >= TimesAnHour && now - _raised[_next] <= HourMicroseconds;
        FaultTraits latches = isRepeated ? FaultTraits.StaysWhenRepeated : FaultTraits.None;
        IsLatched = IsLatched || (traits & (latches | FaultTraits.StaysUntilCleared)) != FaultTraits.None;
    }

    /// <summary>Begins afresh, as after a boot.</summary>
    public void Reset()
    {
        IsActive = false;
        IsLatched = false;
        Times = 0;
    }

    /// <summary>Writes the state to a tape, or takes it from there.</summary>
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
