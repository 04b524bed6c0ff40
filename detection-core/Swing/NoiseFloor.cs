namespace NanoDustSwitch.Detection;

/// <summary>The swing of the line without a tool, learned while no tool runs. The levels are kept above it.</summary>
/// <remarks>
/// Once a second the greatest swing of that second is compared with the floor. The floor rises by a thirty-second of the
/// difference and falls by a quarter of it. It rises so slowly because a tool with a soft start, or one just below the start
/// level, looks like noise for some seconds and must not lift the level out of its own reach.
/// </remarks>
public sealed class NoiseFloor
{
    private const int RiseShift = 5;
    private const int FallShift = 2;

    private readonly int _looksASecond;
    private int _cap = int.MaxValue;

    /// <summary>About the greatest swing of a second without a tool, in sixteenths of a count.</summary>
    public int Floor;

    /// <summary>Greatest power of the present second so far.</summary>
    public int Greatest;

    /// <summary>How many looks are left of the present second.</summary>
    public int LooksLeft;

    /// <summary>Whether the floor has reached its cap: the line is too noisy for the levels that were set.</summary>
    public bool IsAtCap;

    /// <summary>Initializes a new instance of the <see cref="NoiseFloor"/> class.</summary>
    /// <param name="looksASecond">How many powers it is given in a second.</param>
    public NoiseFloor(int looksASecond)
    {
        _looksASecond = looksASecond;
        LooksLeft = looksASecond;
    }

    /// <summary>Starts from a floor that is known, from teaching or from before the settings changed.</summary>
    /// <param name="floor">Floor in sixteenths of a count; cut to the cap.</param>
    /// <param name="cap">Greatest floor allowed, in sixteenths of a count.</param>
    public void Set(int floor, int cap)
    {
        _cap = cap;
        Floor = floor < cap ? floor : cap;
        IsAtCap = false;
        ResetSecond();
    }

    /// <summary>Takes a power of the line without a tool.</summary>
    /// <param name="power">Power as <see cref="SwingWindow.PowerOf"/> gives it, from a valid window.</param>
    /// <returns>True once a second, when the floor was moved.</returns>
    public bool Accept(int power)
    {
        if (power > Greatest)
        {
            Greatest = power;
        }

        if (--LooksLeft > 0)
        {
            return false;
        }

        Move();
        return true;
    }

    /// <summary>Ends the present second: the floor moves towards the greatest swing of it.</summary>
    public void Move()
    {
        int difference = SwingWindow.SwingOf(Greatest, Floor) - Floor;
        int step = difference > 0 ? difference >> RiseShift : -(-difference >> FallShift);

        // The shift turns small differences into 0. Moving by at least one part makes the floor reach its goal all the same.
        if (step == 0 && difference != 0)
        {
            step = difference > 0 ? 1 : -1;
        }

        Floor += step;
        IsAtCap = Floor >= _cap;
        if (IsAtCap)
        {
            Floor = _cap;
        }

        ResetSecond();
    }

    /// <summary>
    /// Starts the present second afresh, for example because a tool has started and what it showed is no noise.
    /// </summary>
    public void ResetSecond()
    {
        Greatest = 0;
        LooksLeft = _looksASecond;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        Greatest = tape.Number(Greatest);
        LooksLeft = tape.Number(LooksLeft);
        Floor = tape.Number(Floor);
        IsAtCap = tape.Flag(IsAtCap);
    }
}
