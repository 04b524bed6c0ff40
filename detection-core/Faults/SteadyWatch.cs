namespace NanoDustSwitch.Detection;

/// <summary>
/// Follows the current over half seconds while the relay is closed: how large it is, how large it was at most, and for how long
/// it has been steady.
/// </summary>
public sealed class SteadyWatch
{
    /// <summary>Looks in a half second: one every eight buckets, which is the length of the window.</summary>
    public const int Looks = Bucket.ASecond / 2 / SwingWindow.Length;

    // Two half seconds are alike when they differ by no more than a tenth or so; what a motor draws without work, and what a
    // vacuum draws with a hose that nobody moves, does. Common practice, no source.
    private const int AlikeShift = 3;

    private long _sum;
    private int _looks;
    private int _reference;

    /// <summary>Swing of the last half second, in sixteenths of a count; 0 until there has been one.</summary>
    public int Level;

    /// <summary>Greatest <see cref="Level"/> since <see cref="Begin"/>.</summary>
    public int Greatest;

    /// <summary>Since when the level has been steady, in microseconds.</summary>
    public long Since;

    /// <summary>Tells whether two swings are alike: they differ by less than an eighth of the larger one.</summary>
    /// <param name="one">A swing.</param>
    /// <param name="other">Another one in the same unit.</param>
    /// <returns>True when they are.</returns>
    public static bool AreAlike(int one, int other)
    {
        return one > other ? one - other < one >> AlikeShift : other - one < other >> AlikeShift;
    }

    /// <summary>Begins afresh, as the relay closes.</summary>
    /// <param name="keepsGreatest">Whether it is the same run of the tool, interrupted only for a look.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Begin(bool keepsGreatest, long now)
    {
        _sum = 0;
        _looks = 0;
        _reference = 0;
        Level = 0;
        Since = now;
        if (!keepsGreatest)
        {
            Greatest = 0;
        }
    }

    /// <summary>Takes a look at the power.</summary>
    /// <param name="power">Power of the last cycle, as <see cref="SwingWindow.Power"/>.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>True when a half second is over.</returns>
    public bool Add(int power, long now)
    {
        _sum += power;
        if (++_looks < Looks)
        {
            return false;
        }

        Level = SwingWindow.SwingOf((int)(_sum / Looks), Level);
        _sum = 0;
        _looks = 0;
        Greatest = Level > Greatest ? Level : Greatest;
        if (!AreAlike(Level, _reference))
        {
            // It may be that the current changed in the middle of this half second. Then the next one is not like it either.
            _reference = Level;
            Since = now - (Time.Second / 2);
        }

        return true;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _sum = tape.Number(_sum);
        _looks = tape.Number(_looks);
        _reference = tape.Number(_reference);
        Level = tape.Number(Level);
        Greatest = tape.Number(Greatest);
        Since = tape.Number(Since);
    }
}
