namespace NanoDustSwitch.Detection;

/// <summary>The swing of a quiet line, learned while no tool runs; the levels never sit inside it.</summary>
/// <remarks>
/// Every second the greatest power of that second, as a swing, is compared with the floor. The floor rises by a thirty-second of the
/// difference, so that a soft start or a few seconds just below the level do not poison it, and falls by a quarter.
/// </remarks>
public sealed class NoiseFloor
{
    private const int RiseShift = 5;
    private const int FallShift = 2;

    private readonly int _looksASecond;
    private int _cap = int.MaxValue;

    /// <summary>Greatest swing that idle seconds show, in sixteenths of a count.</summary>
    public int Floor;

    /// <summary>Greatest power of the second under way.</summary>
    public int Greatest;

    /// <summary>Looks left of it.</summary>
    public int LooksLeft;

    /// <summary>Whether the floor has reached its cap: the line is too noisy for the levels that were set.</summary>
    public bool IsAtCap;

    /// <summary>Initializes a new instance of the <see cref="NoiseFloor"/> class.</summary>
    /// <param name="looksASecond">Swings that come in a second.</param>
    public NoiseFloor(int looksASecond)
    {
        _looksASecond = looksASecond;
        LooksLeft = looksASecond;
    }

    /// <summary>Starts from a floor that was taught or stored.</summary>
    /// <param name="floor">Floor in sixteenths of a count.</param>
    /// <param name="cap">Greatest floor allowed, in sixteenths of a count.</param>
    public void Set(int floor, int cap)
    {
        _cap = cap;
        Floor = floor < cap ? floor : cap;
        IsAtCap = false;
        Restart();
    }

    /// <summary>Takes the power of the idle line.</summary>
    /// <param name="power">Power as <see cref="SwingWindow.PowerOf"/>, from a valid window.</param>
    /// <returns>True when the floor moved, once a second.</returns>
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

    /// <summary>Ends a second: the floor moves towards the greatest power of it.</summary>
    public void Move()
    {
        int difference = SwingWindow.SwingOf(Greatest, Floor) - Floor;
        int step = difference > 0 ? difference >> RiseShift : -(-difference >> FallShift);

        // A shift loses small differences; one part at a time still gets there.
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

        Restart();
    }

    /// <summary>Drops the second under way: a tool has begun, and its rise is no noise.</summary>
    public void Restart()
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
