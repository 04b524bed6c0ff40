namespace NanoDustSwitch.Detection;

/// <summary>
/// Twelve tools that the switch has learned by itself from their starts. A tool is known once it was seen three times alike.
/// A thirteenth takes the place of the one that was seen longest ago, where a person has asked nothing of it.
/// </summary>
public sealed class ToolBook
{
    /// <summary>Number of places.</summary>
    public const int Places = 12;

    /// <summary>Numbers that are kept of each tool; see <see cref="ToolFigure"/>.</summary>
    public const int Figures = 18;

    /// <summary>From so many starts on a tool is known.</summary>
    public const int StartsToKnow = 3;

    /// <summary>The wish that the vacuum takes no notice of it. A wish above 0 is the run-on in ms, plus 1; 0 is none.</summary>
    public const int NoVacuum = -1;

    /// <summary>Longest run-on of a tool's own, in ms: that of the setting.</summary>
    public const int LongestRunOn = 180_000;

    /// <summary>Stands for the level of a first onset: another one follows.</summary>
    public const int Another = 1 << 24;

    // A start may be one of a tool whose height is within a fifth, and what follows within a ninth: so much does the point of
    // the cycle at which the switch closes make of a difference.
    private const int HeightPart = 5;
    private const int AfterPart = 9;

    private const int MostStarts = 30_000;
    private const int Longest = 255;

    // A tool that was seen more often than this is one of its own.
    private const int MostToJoin = 4;

    // A quarter of what is known of a start is the latest one; the range of levels shrinks by a thirty-second.
    private const int NewShift = 2;
    private const int ShrinkShift = 5;

    // It grows by an eighth at most.
    private const int GrowShift = 3;

    // One odd start must not make everything alike.
    private const int MostSpread = 280;

    // So many starts longer a tool that is known stays than one that is not.
    private const int StaysLonger = 20;

    private int _starts;

    /// <summary>All its numbers: <see cref="Figures"/> of the first tool, then those of the next.</summary>
    public readonly int[] Numbers = new int[Places * Figures];

    /// <summary>The lowest of the levels that the onset which was looked up last may come to.</summary>
    public int Lowest;

    /// <summary>The highest of them.</summary>
    public int Highest;

    /// <summary>Number of the present boot, 0 to 65,535.</summary>
    public int Boot;

    /// <summary>Whether one that is known needed no vacuum when the last onset was looked up.</summary>
    public bool HasNoVacuum;

    /// <summary>Goes up with whatever is worth keeping over a power cut soon.</summary>
    public int Changes;

    /// <summary>Gets or sets a number.</summary>
    /// <param name="place">The tool's place, 0 to 11.</param>
    /// <param name="figure">Which number.</param>
    /// <returns>The number.</returns>
    public int this[int place, ToolFigure figure]
    {
        get { return Numbers[(place * Figures) + (int)figure]; }
        set { Numbers[(place * Figures) + (int)figure] = value; }
    }

    /// <summary>Tells whether a tool is known.</summary>
    /// <param name="place">Its place.</param>
    /// <returns>True when it was seen often enough.</returns>
    public bool IsKnown(int place)
    {
        return this[place, ToolFigure.Starts] >= StartsToKnow;
    }

    /// <summary>Tells whether two tools or more are known.</summary>
    /// <returns>True when they are.</returns>
    public bool HasTwo()
    {
        int known = 0;
        for (int i = 0; i < Places; i++)
        {
            known += IsKnown(i) ? 1 : 0;
        }

        return known > 1;
    }

    /// <summary>Looks up a start; what is known of it is in <see cref="Lowest"/> and <see cref="Highest"/> then.</summary>
    /// <param name="height">Height of the onset, a swing in sixteenths of a count.</param>
    /// <param name="after">Swing a tenth of a second later; 0 where it is not known yet.</param>
    /// <returns>
    /// Whether anything is known of it. Where several may be meant, all of them count: the vacuum waits rather too long than too
    /// short.
    /// </returns>
    public bool Find(int height, int after)
    {
        int[] numbers = Numbers;
        Lowest = Another;
        Highest = 0;
        HasNoVacuum = false;
        int most = height + (height / HeightPart);
        int least = height - (height / HeightPart);

        // What climbs is seen first at any height, by the moment at which it is found.
        bool climbs = after - height > height / 8;
        for (int i = 0; i < Places * Figures; i += Figures)
        {
            if (numbers[i + (int)ToolFigure.Starts] < StartsToKnow)
            {
                continue;
            }

            HasNoVacuum |= numbers[i + (int)ToolFigure.Wish] == NoVacuum;
            int one = numbers[i];
            if ((one >= least && one <= most && IsNear(numbers[i + (int)ToolFigure.After], after))
                || (climbs && IsClimb(i, after)))
            {
                int level = numbers[i + (int)ToolFigure.Least];
                Lowest = level < Lowest ? level : Lowest;
                Highest = level > Highest ? level : Highest;
            }

            one = numbers[i + (int)ToolFigure.First];
            if (one > 0 && one >= least && one <= most && IsNear(numbers[i + (int)ToolFigure.FirstAfter], after))
            {
                Highest = Another;
            }
        }

        return Highest > 0;
    }

    // Whether a start that climbs may be of a tool that climbs as well, or has no surge.
    private bool IsClimb(int at, int after)
    {
        int height = Numbers[at];
        int known = Numbers[at + (int)ToolFigure.After];
        int level = Numbers[at + (int)ToolFigure.Least];
        return (height - known < known >> 3 && IsNear(known, after))
            || (after < level && ToolMatch.Climbs(height, known, level, ToolMatch.RiseOfKnown));
    }

    private static bool IsNear(int known, int after)
    {
        int away = after / AfterPart;
        return after == 0 || (known >= after - away && known <= after + away);
    }

    /// <summary>Learns from a start.</summary>
    /// <param name="seen">What it showed; its level is known.</param>
    /// <param name="place">Place of the tool that it was.</param>
    /// <param name="isOutside">Whether its level was far above, as in a cut, and says nothing.</param>
    public void Learn(ToolFigures seen, int place, bool isOutside)
    {
        int[] numbers = Numbers;
        int at = place * Figures;
        int height = numbers[at];
        int after = numbers[at + (int)ToolFigure.After];
        Follow(numbers, at + (int)ToolFigure.HeightSpread, Spread(seen.Height - height, height));
        Follow(numbers, at + (int)ToolFigure.AfterSpread, Spread(seen.After - after, after));
        Follow(numbers, at, seen.Height);
        Follow(numbers, at + (int)ToolFigure.After, seen.After > 0 ? seen.After : 1);
        if (seen.First > 0)
        {
            numbers[at + (int)ToolFigure.First] = seen.First;
            numbers[at + (int)ToolFigure.FirstAfter] = seen.FirstAfter;
        }

        if (!isOutside)
        {
            Follow(numbers, at + (int)ToolFigure.Third, seen.Third);
            Follow(numbers, at + (int)ToolFigure.Half, seen.Half);
            Follow(numbers, at + (int)ToolFigure.Length, seen.Length);
            Follow(numbers, at + (int)ToolFigure.Knee, seen.KneePart);
            LearnLevel(numbers, at, seen.Level);
        }

        int starts = numbers[at + (int)ToolFigure.Starts];
        if (starts < StartsToKnow)
        {
            Changes++;
        }

        numbers[at + (int)ToolFigure.Starts] = starts < MostStarts ? starts + 1 : starts;
        numbers[at + (int)ToolFigure.Used] = ++_starts;
        numbers[at + (int)ToolFigure.Boot] = Boot;
    }

    /// <summary>Counts how long a tool ran.</summary>
    /// <param name="place">Its place.</param>
    /// <param name="microseconds">How long, in microseconds.</param>
    public void Count(int place, long microseconds)
    {
        long seconds = this[place, ToolFigure.Seconds] + ((microseconds + (Time.Second / 2)) / Time.Second);
        this[place, ToolFigure.Seconds] = seconds < int.MaxValue ? (int)seconds : int.MaxValue;
    }

    /// <summary>Makes room for a new tool.</summary>
    /// <param name="seen">What its first start showed; its level is known.</param>
    /// <returns>Its place; <see cref="ToolGuess.None"/> where a person has asked something of all of them.</returns>
    public int Begin(ToolFigures seen)
    {
        int place = LeastUsed();
        if (place == ToolGuess.None)
        {
            return place;
        }

        Forget(place);
        int[] numbers = Numbers;
        int at = place * Figures;
        numbers[at] = seen.Height;
        numbers[at + (int)ToolFigure.After] = seen.After > 0 ? seen.After : 1;
        numbers[at + (int)ToolFigure.Least] = seen.Level;
        numbers[at + (int)ToolFigure.Most] = seen.Level;
        numbers[at + (int)ToolFigure.Third] = seen.Third;
        numbers[at + (int)ToolFigure.Half] = seen.Half;
        numbers[at + (int)ToolFigure.Length] = seen.Length;
        numbers[at + (int)ToolFigure.Knee] = seen.KneePart;
        return place;
    }

    /// <summary>
    /// Takes two places for one tool, of which one is hardly known: a tool may seem to be two where its starts differ.
    /// </summary>
    /// <param name="one">A place.</param>
    /// <param name="other">Another place.</param>
    /// <returns>The place of the tool: the one that was seen more often, or that a person has named.</returns>
    public int Join(int one, int other)
    {
        bool keepsOne = this[one, ToolFigure.Starts] >= this[other, ToolFigure.Starts];
        int kept = keepsOne ? one : other;
        int gone = keepsOne ? other : one;
        if (!HasSurge(one) || !HasSurge(other) || this[gone, ToolFigure.Starts] > MostToJoin
            || this[gone, ToolFigure.Named] != 0 || this[gone, ToolFigure.Wish] != 0)
        {
            return one;
        }

        Raise(kept, ToolFigure.HeightSpread, Apart(kept, gone, ToolFigure.Height));
        Raise(kept, ToolFigure.AfterSpread, Apart(kept, gone, ToolFigure.After));
        Raise(kept, ToolFigure.Most, this[gone, ToolFigure.Most]);
        Raise(kept, ToolFigure.Used, this[gone, ToolFigure.Used]);
        int least = this[gone, ToolFigure.Least];
        this[kept, ToolFigure.Least] = least < this[kept, ToolFigure.Least] ? least : this[kept, ToolFigure.Least];
        this[kept, ToolFigure.Starts] += this[gone, ToolFigure.Starts];
        this[kept, ToolFigure.Seconds] += this[gone, ToolFigure.Seconds];
        Forget(gone);
        return kept;
    }

    /// <summary>Forgets a tool.</summary>
    /// <param name="place">Its place.</param>
    public void Forget(int place)
    {
        int[] numbers = Numbers;
        int at = place * Figures;
        for (int i = at; i < at + Figures; i++)
        {
            numbers[i] = 0;
        }

        Changes++;
    }

    /// <summary>Forgets all tools.</summary>
    public void Forget()
    {
        for (int i = 0; i < Places; i++)
        {
            Forget(i);
        }
    }

    /// <summary>
    /// Checks a tool that was read from somewhere. What cannot be is forgotten, for a wrong number could keep the vacuum off.
    /// </summary>
    /// <param name="place">Its place.</param>
    /// <returns>False when it was forgotten.</returns>
    public bool Check(int place)
    {
        if (!IsTool(place))
        {
            Forget(place);
            return false;
        }

        int used = this[place, ToolFigure.Used];
        _starts = used > _starts ? used : _starts;
        return true;
    }

    private bool IsTool(int place)
    {
        int least = this[place, ToolFigure.Least];
        return IsWithin(place, ToolFigure.Height, 1, ToolFigures.MostSwing)
            && IsWithin(place, ToolFigure.After, 1, ToolFigures.MostSwing)
            && IsWithin(place, ToolFigure.Least, 1, ToolFigures.MostSwing)
            && IsWithin(place, ToolFigure.Most, least, ToolFigures.MostSwing)
            && IsWithin(place, ToolFigure.Third, 0, ToolFigures.MostPart)
            && IsWithin(place, ToolFigure.Half, 0, ToolFigures.MostPart)
            && IsWithin(place, ToolFigure.HeightSpread, 0, MostSpread)
            && IsWithin(place, ToolFigure.AfterSpread, 0, MostSpread)
            && IsWithin(place, ToolFigure.Length, 0, Longest)
            && IsWithin(place, ToolFigure.Starts, 1, MostStarts + MostToJoin)
            && IsWithin(place, ToolFigure.Used, 0, int.MaxValue)
            && IsWithin(place, ToolFigure.Seconds, 0, int.MaxValue)
            && IsWithin(place, ToolFigure.Wish, NoVacuum, LongestRunOn + 1)
            && IsWithin(place, ToolFigure.Named, 0, 1)
            && IsWithin(place, ToolFigure.Knee, 0, ToolFigures.MostKnee)
            && IsWithin(place, ToolFigure.First, 0, ToolFigures.MostSwing)
            && IsWithin(place, ToolFigure.FirstAfter, 0, ToolFigures.MostSwing)
            && IsWithin(place, ToolFigure.Boot, 0, ushort.MaxValue);
    }

    /// <summary>Puts a tool into a place, as a backup has it.</summary>
    /// <param name="place">The place.</param>
    /// <param name="numbers">Its numbers.</param>
    /// <returns>False when they are no tool's; the place is as it was.</returns>
    public bool Put(int place, int[] numbers)
    {
        for (int i = 0; i < Figures; i++)
        {
            int before = this[place, (ToolFigure)i];
            this[place, (ToolFigure)i] = numbers[i];
            numbers[i] = before;
        }

        if (!IsTool(place))
        {
            for (int i = 0; i < Figures; i++)
            {
                this[place, (ToolFigure)i] = numbers[i];
            }

            return false;
        }

        this[place, ToolFigure.Used] = ++_starts;
        this[place, ToolFigure.Boot] = Boot;
        Changes++;
        return true;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(Numbers);
        _starts = tape.Number(_starts);
        Changes = tape.Number(Changes);
        Boot = tape.Number(Boot);
        HasNoVacuum = tape.Flag(HasNoVacuum);
    }

    private void Raise(int place, ToolFigure figure, int least)
    {
        this[place, figure] = this[place, figure] < least ? least : this[place, figure];
    }

    private int Apart(int one, int other, ToolFigure figure)
    {
        return Spread(this[other, figure] - this[one, figure], this[one, figure]) >> NewShift;
    }

    private bool HasSurge(int place)
    {
        return this[place, ToolFigure.Height] / 2 > this[place, ToolFigure.Most];
    }

    private static int Spread(int difference, int whole)
    {
        int spread = ToolMatch.Part(difference, whole);
        return spread < MostSpread ? spread : MostSpread;
    }

    private bool IsWithin(int place, ToolFigure figure, int least, int most)
    {
        int number = this[place, figure];
        return number >= least && number <= most;
    }

    private static void Follow(int[] numbers, int at, int latest)
    {
        int known = numbers[at];
        numbers[at] = known + ((latest - known) >> NewShift);
    }

    private static void LearnLevel(int[] numbers, int at, int level)
    {
        int least = numbers[at + (int)ToolFigure.Least];
        int most = numbers[at + (int)ToolFigure.Most];
        int lower = least - (least >> GrowShift);
        int higher = most + (most >> GrowShift);
        numbers[at + (int)ToolFigure.Least] = level >= least ? least + ((level - least) >> ShrinkShift)
            : level > lower ? level : lower;
        numbers[at + (int)ToolFigure.Most] = level <= most ? most - ((most - level) >> ShrinkShift)
            : level < higher ? level : higher;
    }

    private int LeastUsed()
    {
        int least = ToolGuess.None;
        long leastUse = long.MaxValue;
        int[] numbers = Numbers;
        for (int i = 0, at = 0; i < Places; i++, at += Figures)
        {
            if (numbers[at] == 0)
            {
                return i;
            }

            long use = numbers[at + (int)ToolFigure.Used];
            use += numbers[at + (int)ToolFigure.Starts] >= StartsToKnow ? StaysLonger : 0;
            bool isKept = (numbers[at + (int)ToolFigure.Wish] | numbers[at + (int)ToolFigure.Named]) != 0;
            if (!isKept && use < leastUse)
            {
                leastUse = use;
                least = i;
            }
        }

        return least;
    }
}
