namespace NanoDustSwitch.Detection;

/// <summary>
/// What stands on the line without a tool: a lamp, a charger, hum. It is learned once a second from the powers of that second,
/// and told apart from noise, so that the levels can be put above both.
/// </summary>
/// <remarks>
/// The power of a steady current hardly changes, and that of noise does: the greatest of a second is about three times the mean
/// or more (white and 1/f noise, simulated). For a steady current with noise the power of the steady part lies between the two.
/// </remarks>
public sealed class StandingLoad
{
    /// <summary>Powers that it takes in a second.</summary>
    public const int Looks = Bucket.ASecond / 4;

    // A lamp that was lit counts whole after ten seconds, and one that went out is forgotten at once. A tool with a soft start
    // counts for less until it is found. Pulses of a charger that beat with the readings show more and less in turn, over
    // seconds: the more counts.
    private const int RiseShift = 2;
    private const int FallShift = 4;

    /// <summary>
    /// Mean power of the line without a tool, as <see cref="SwingWindow.PowerOf"/> gives it.
    /// </summary>
    public int Power;

    /// <summary>Mean power of the last second without a tool; beside a lamp just lit more than <see cref="Power"/>.</summary>
    public int Mean;

    /// <summary>Swing of what is steady in it, in sixteenths of a count; 0 where all is noise.</summary>
    public int Steady;

    /// <summary>Sum of the powers of the present second.</summary>
    public long Sum;

    /// <summary>Greatest power of the present second so far.</summary>
    public int Greatest;

    /// <summary>How many looks are left of the present second.</summary>
    public int LooksLeft = Looks;

    private int _steadyPower;

    /// <summary>Forgets all that was learned.</summary>
    public void Reset()
    {
        Power = 0;
        Mean = 0;
        Steady = 0;
        _steadyPower = 0;
        ResetSecond();
    }

    /// <summary>Starts the present second afresh, for example because a tool has started.</summary>
    public void ResetSecond()
    {
        Sum = 0;
        Greatest = 0;
        LooksLeft = Looks;
    }

    /// <summary>Learns from the present second, in which no tool ran, and starts the next one.</summary>
    /// <returns>How far the greatest swing of it stood above what is steady, in sixteenths of a count: noise.</returns>
    public int Learn()
    {
        int mean = (int)(Sum / Looks);
        Mean = mean;
        int difference = mean - Power;
        Power += mean < Power >> 1 ? difference : difference >> (difference > 0 ? RiseShift : FallShift);

        // For noise alone, with a greatest power of 2.5 times the mean or more, this is below 0.
        int steady = mean + ((mean - Greatest) / 3 * 2);
        _steadyPower += (steady - _steadyPower) >> RiseShift;
        if (_steadyPower > mean)
        {
            _steadyPower = mean;
        }

        Steady = SwingWindow.SwingOf(_steadyPower, Steady);
        int above = SwingWindow.SwingOf(Greatest, Steady) - Steady;
        ResetSecond();
        return above > 0 ? above : 0;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        Power = tape.Number(Power);
        Mean = tape.Number(Mean);
        Steady = tape.Number(Steady);
        Sum = tape.Number(Sum);
        Greatest = tape.Number(Greatest);
        LooksLeft = tape.Number(LooksLeft);
        _steadyPower = tape.Number(_steadyPower);
    }
}
