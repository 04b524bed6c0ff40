namespace NanoDustSwitch.Detection;

/// <summary>
/// What the switch has learned of the tools from their starts: how high the current stood at first, and how low it came in the
/// end. Twelve entries; a thirteenth takes the place of the one that was used longest ago.
/// </summary>
/// <remarks>
/// An entry is found by the height of the onset and by the swing a tenth of a second later, because at a start that is all one
/// knows. Where several may be meant, all of them count: the vacuum waits rather too long than too short.
/// </remarks>
public sealed class ToolMemory
{
    /// <summary>Number of entries.</summary>
    public const int Entries = 12;

    /// <summary>From so many starts on an entry is relied upon.</summary>
    public const int StartsToKnow = 3;

    /// <summary>Stands for the level of an onset that another one follows: of a tool's lamp or electronics.</summary>
    public const int Another = 1 << 24;

    // A start belongs to an entry from which both its figures differ by an eighth at most: so much does the point of the cycle at
    // which the switch closes make of a difference. All entries within a fifth of the one and a ninth of the other may be meant.
    private const int SamePart = 8;
    private const int HeightPart = 5;
    private const int AfterPart = 9;

    // A start whose lowest level was higher than what is remembered, because the cut began at once, lifts it by a sixteenth of
    // the difference. So a level that was too low once does not stay for ever.
    private const int LiftShift = 4;

    // A quarter of what is remembered of an onset is the latest one.
    private const int NewPart = 4;

    private const int MostSeen = 1000;

    // A level that moves by less than this part of itself need not be kept anew.
    private const int WorthKeepingPart = 16;

    /// <summary>How many numbers hold all that it knows.</summary>
    public const int Size = 5 * Entries;

    private readonly long[] _heights = new long[Entries];
    private readonly long[] _afters = new long[Entries];
    private readonly long[] _levels = new long[Entries];
    private readonly long[] _seen = new long[Entries];
    private readonly long[] _used = new long[Entries];
    private long _uses;

    /// <summary>Goes up with whatever is learned or forgotten that is worth keeping over a power cut.</summary>
    public int Changes;

    /// <summary>The lowest of the levels that the onset which was looked up last may come to.</summary>
    public int Lowest;

    /// <summary>The highest of them.</summary>
    public int Highest;

    /// <summary>Gets or sets a number of what it knows, for keeping it over a power cut.</summary>
    /// <param name="index">0 to <see cref="Size"/> less one.</param>
    /// <returns>The number.</returns>
    public int this[int index]
    {
        get
        {
            return (int)Row(index / Entries)[index % Entries];
        }

        set
        {
            Row(index / Entries)[index % Entries] = value;
            _uses = index / Entries == 4 && value > _uses ? value : _uses;
        }
    }

    /// <summary>Looks up a start; what is known of it is in <see cref="Lowest"/> and <see cref="Highest"/> then.</summary>
    /// <param name="height">Height of the onset, a swing in sixteenths of a count.</param>
    /// <param name="after">Swing a tenth of a second later; 0 where it is not known yet.</param>
    /// <returns>Whether anything is known of it.</returns>
    public bool Find(int height, int after)
    {
        long lowest = Another;
        long highest = 0;
        long least = height - (height / HeightPart);
        long most = height + (height / HeightPart);
        long leastAfter = after - (after / AfterPart);
        long mostAfter = after > 0 ? after + (after / AfterPart) : long.MaxValue;
        for (int i = 0; i < Entries; i++)
        {
            long one = _heights[i];
            if (one >= least && one <= most && _seen[i] >= StartsToKnow)
            {
                one = _afters[i];
                if (one >= leastAfter && one <= mostAfter)
                {
                    long level = _levels[i];
                    lowest = level < lowest ? level : lowest;
                    highest = level > highest ? level : highest;
                }
            }
        }

        Lowest = (int)lowest;
        Highest = (int)highest;
        return highest > 0;
    }

    /// <summary>Learns from a start.</summary>
    /// <param name="height">Height of the onset, above 0.</param>
    /// <param name="after">Swing a tenth of a second after the onset.</param>
    /// <param name="level">Lowest steady level that followed.</param>
    public void Learn(int height, int after, int level)
    {
        int entry = Nearest(height, after);
        if (entry < 0)
        {
            entry = LeastUsed();
            _heights[entry] = height;
            _afters[entry] = after;
            _levels[entry] = level;
            _seen[entry] = 0;
        }

        _heights[entry] += (height - _heights[entry]) / NewPart;
        _afters[entry] += (after - _afters[entry]) / NewPart;
        long known = _levels[entry];
        long moved = level == Another ? 0 : level > known ? (level - known) >> LiftShift : level - known;
        _levels[entry] = known + moved;
        if (_seen[entry] < StartsToKnow || moved > known / WorthKeepingPart || moved < -known / WorthKeepingPart)
        {
            Changes++;
        }

        if (_seen[entry] < MostSeen)
        {
            _seen[entry]++;
        }

        _used[entry] = ++_uses;
    }

    /// <summary>Forgets everything: another sensor shows the same tool with another swing.</summary>
    public void Forget()
    {
        for (int i = 0; i < Entries; i++)
        {
            _heights[i] = 0;
            _seen[i] = 0;
            _used[i] = 0;
        }

        Changes++;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_heights);
        tape.Numbers(_afters);
        tape.Numbers(_levels);
        tape.Numbers(_seen);
        tape.Numbers(_used);
        _uses = tape.Number(_uses);
        Changes = tape.Number(Changes);
    }

    private long[] Row(int row)
    {
        return row == 0 ? _heights : row == 1 ? _afters : row == 2 ? _levels : row == 3 ? _seen : _used;
    }

    private int Nearest(int height, int after)
    {
        int nearest = -1;
        long least = (height / SamePart) + 1;
        long leastAfter = after - (after / SamePart);
        long mostAfter = after + (after / SamePart);
        for (int i = 0; i < Entries; i++)
        {
            long distance = _heights[i] - height;
            distance = distance < 0 ? -distance : distance;
            if (distance < least && _afters[i] >= leastAfter && _afters[i] <= mostAfter)
            {
                least = distance;
                nearest = i;
            }
        }

        return nearest;
    }

    private int LeastUsed()
    {
        int least = 0;
        for (int i = 1; i < Entries; i++)
        {
            if (_used[i] < _used[least])
            {
                least = i;
            }
        }

        return least;
    }
}
