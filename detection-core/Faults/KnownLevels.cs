namespace NanoDustSwitch.Detection;

/// <summary>
/// Levels that were looked at and stayed while the relay was open, so they are a tool's and not the vacuum's: what tools draw
/// when they idle. The last eight are kept.
/// </summary>
public sealed class KnownLevels
{
    private const int Most = 8;

    private readonly int[] _levels = new int[Most];
    private int _next;

    /// <summary>Tells whether a level is known.</summary>
    /// <param name="level">Swing in sixteenths of a count, above 0.</param>
    /// <returns>True when it is like one of the levels that were noted.</returns>
    public bool Has(int level)
    {
        for (int i = 0; i < Most; i++)
        {
            if (SteadyWatch.AreAlike(level, _levels[i]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Notes a level; the one that was noted first is forgotten.</summary>
    /// <param name="level">Swing in sixteenths of a count.</param>
    public void Note(int level)
    {
        _levels[_next] = level;
        _next = (_next + 1) & (Most - 1);
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_levels);
        _next = tape.Number(_next);
    }
}
