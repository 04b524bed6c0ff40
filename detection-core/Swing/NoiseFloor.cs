namespace NanoDustSwitch.Detection;

/// <summary>The noise of the line without a tool, learned while no tool runs. The levels are kept above it.</summary>
/// <remarks>
/// Once a second the greatest swing of that second, less what stands steadily on the line, is compared with the floor. The floor
/// rises by a thirty-second of the difference and falls by a quarter of it. It rises so slowly because a tool with a soft start,
/// or one just below the start level, looks like noise for some seconds and must not lift the level out of its own reach.
/// </remarks>
public sealed class NoiseFloor
{
    private const int RiseShift = 5;
    private const int FallShift = 2;

    private int _cap = int.MaxValue;

    /// <summary>About the greatest swing of a second without a tool, in sixteenths of a count.</summary>
    public int Floor;

    /// <summary>Whether the floor has reached its cap: the line is too noisy for the levels that were set.</summary>
    public bool IsAtCap;

    /// <summary>Starts from a floor that is known, from teaching or from before the settings changed.</summary>
    /// <param name="floor">Floor in sixteenths of a count; cut to the cap.</param>
    /// <param name="cap">Greatest floor allowed, in sixteenths of a count.</param>
    public void Set(int floor, int cap)
    {
        _cap = cap;
        Floor = floor < cap ? floor : cap;
        IsAtCap = false;
    }

    /// <summary>Moves the floor towards the noise of a second.</summary>
    /// <param name="noise">Greatest swing of the second, less what is steady in it, in sixteenths of a count.</param>
    public void Move(int noise)
    {
        int difference = noise - Floor;
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
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        Floor = tape.Number(Floor);
        IsAtCap = tape.Flag(IsAtCap);
    }
}
