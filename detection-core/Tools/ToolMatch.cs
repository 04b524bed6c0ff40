namespace NanoDustSwitch.Detection;

/// <summary>
/// Tells how well a start agrees with a tool that is known: the sum of the squares of what differs, each in units of what a
/// tool's starts usually differ by. All constants were tuned on drawn motors, and judged on others (tests/benchmark).
/// </summary>
public sealed class ToolMatch
{
    /// <summary>The square of one unit.</summary>
    public const int One = Unit * Unit;

    /// <summary>A known start that rises by so many eighths in a tenth of a second climbs.</summary>
    public const int RiseOfKnown = 3;

    // A unit has so many parts.
    private const int Unit = 64;
    private const int MostUnits = 20;

    // What starts usually differ by: parts of 1024 of a swing or share, stretches of a length, sixty-fourths of a knee's place.
    private const int HeightUsual = 95;
    private const int AfterUsual = 91;
    private const int LevelUsual = 85;
    private const int ClimbUsual = 256;
    private const int ThirdUsual = 2;
    private const int HalfUsual = 42;
    private const int LengthUsual = 2;
    private const int KneeUsual = 20;

    // A start above this is cut off at the rails, and its height tells little.
    private const int Clipped = 45_000;
    private const int ClippedUsual = 134;

    // What speaks against a tool at most where a start climbs, and what another load, a cut or another number of onsets costs.
    private const int ClimbMost = One * 7 / 2;
    private const int ShapeMost = 8 * One;
    private const int LoadCosts = 4 * One;
    private const int CutCosts = 7 * One;
    private const int CutWeight = 3;
    private const int StagesCost = 4 * One;

    // Of a start beside another tool: how far its swings may be off, in parts of 1024 of the other tool's, and the most that its
    // length costs. A surge seems shorter where its end is lost in what the other tool draws.
    private const int BesideUsual = 150;
    private const int BesideMost = 4 * One;
    private const int ShorterMost = One;

    // Of a start that is looked at, an eighth more after a tenth of a second may be a climb.
    private const int RiseOfStart = 1;

    // From here on nothing that follows can make it the tool, or leave one in doubt.
    private const int Hopeless = ToolGuess.MostScore + ToolGuess.Margin;

    // Within these it is surely the tool: one with a surge, and one that draws the same from its first cycle on.
    private const int SureSurgeScore = 10 * One;
    private const int SureLevel = 190;
    private const int SureKnee = 14;
    private const int SureHalfUsual = 38;
    private const int SureLength = 6;
    private const int SureFlatScore = 8 * One;
    private const int SureFlatLevel = 64;
    private const int SureFlatThird = 3 * One;

    // What draws the same from its first cycle on follows the mains, which may be 6 % above or below (the drawn shops), and
    // drifts a little: so much is between the lowest and the highest of its levels, in parts of 1024.
    private const int SureFlatRange = 165;

    // A count and a half of the converter, in the unit of a swing. The third harmonic is the mean of many, and a quarter of a
    // count of noise remains.
    private const int NoiseMost = 24;
    private const int ThirdNoise = 4 * ToolFigures.Whole;

    // How much more than its mean spread counts as usual for a tool.
    private const int SpreadTimes = 6;

    // Of height and what follows it one may be far off, by the moment of switching or by the load, until its spread is known.
    private const int OneIsOffShift = 2;

    // A cut draws this much more than idling at most.
    private const int CutTimes = 33;
    private const int CutTimesOf = 10;

    /// <summary>How little agrees; less is better.</summary>
    public int Score;

    /// <summary>Whether the level was that of a cut.</summary>
    public bool IsCut;

    /// <summary>Tells a difference as a part of a number.</summary>
    /// <param name="difference">The difference.</param>
    /// <param name="whole">The number, above 0.</param>
    /// <returns>0 or more, in 1024ths.</returns>
    public static int Part(int difference, int whole)
    {
        long part = (long)(difference < 0 ? -difference : difference) * ToolFigures.Whole / whole;
        return part < int.MaxValue ? (int)part : int.MaxValue;
    }

    /// <summary>Compares what stands on the line in the first tenth of a second alone.</summary>
    /// <param name="book">The tools.</param>
    /// <param name="place">Place of the tool, not an empty one.</param>
    /// <param name="seen">What the start showed.</param>
    /// <returns>How little agrees; less is better.</returns>
    public static int StartScore(ToolBook book, int place, ToolFigures seen)
    {
        int[] numbers = book.Numbers;
        int at = place * ToolBook.Figures;
        int height = numbers[at];
        int after = numbers[at + (int)ToolFigure.After];
        int least = numbers[at + (int)ToolFigure.Least];
        if (Climbs(height, after, least, RiseOfKnown))
        {
            // What climbs begins anywhere, by the moment at which it is first seen; what begins low, below its level.
            int above = seen.Height < least || height >= least ? 0 : Square(Part(seen.Height - least, least), HeightUsual);
            if (seen.After == 0)
            {
                return above;
            }

            int begins = Square(Part(seen.Height - height, height), ClimbUsual + Beside(seen, height, least))
                + Square(Part(seen.After - after, after), ClimbUsual + Beside(seen, after, least));
            return (begins < ClimbMost ? begins : ClimbMost) + (above < ClimbMost ? above : ClimbMost);
        }

        int usual = height > Clipped ? ClippedUsual : HeightUsual;
        int heightUsual = Usual(usual, numbers[at + (int)ToolFigure.HeightSpread]);
        int afterUsual = Usual(AfterUsual, numbers[at + (int)ToolFigure.AfterSpread]);
        if (seen.Other > 0)
        {
            return Square(Part(seen.Height - height, height), heightUsual + Beside(seen, height, least))
                + Square(Part(seen.After - after, after), afterUsual + Beside(seen, after, least));
        }

        int first = Square(Part(seen.Height - height, height), heightUsual) + Penalty(heightUsual, usual);
        if (seen.After == 0)
        {
            return first;
        }

        int second = Square(Part(seen.After - after, after), afterUsual) + Penalty(afterUsual, AfterUsual);
        if (!book.IsKnown(place))
        {
            return first < second ? first + (second >> OneIsOffShift) : second + (first >> OneIsOffShift);
        }

        return first + second;
    }

    /// <summary>Compares.</summary>
    /// <param name="book">The tools.</param>
    /// <param name="place">Place of the tool, not an empty one.</param>
    /// <param name="seen">What the start showed; its level is known.</param>
    public void Compare(ToolBook book, int place, ToolFigures seen)
    {
        int[] numbers = book.Numbers;
        int at = place * ToolBook.Figures;
        int start = StartScore(book, place, seen);
        IsCut = false;
        if (start > Hopeless)
        {
            // Most places of the book are left here, which spares the board much.
            Score = start;
            return;
        }

        int least = numbers[at + (int)ToolFigure.Least];
        int most = numbers[at + (int)ToolFigure.Most];
        int third = numbers[at + (int)ToolFigure.Third];
        int half = numbers[at + (int)ToolFigure.Half];
        int length = numbers[at + (int)ToolFigure.Length];
        int level = seen.Level;
        bool climbs = Climbs(numbers[at], numbers[at + (int)ToolFigure.After], least, RiseOfKnown);
        int shape = seen.Other > 0 ? 0 : Square(seen.Half - half, HalfUsual + (half >> 2));
        int away = level < least ? Part(least - level, least) : level > most ? Part(level - most, most) : 0;
        int thirds = seen.Third < 0 ? 0 : Square(seen.Third - third, ThirdUsual + (third / 5));
        int lengths = Square(seen.Length - length, LengthUsual + (length / 5));
        Score = start + shape + Square(away, LevelUsual);
        int stages = 0;
        if (seen.Other > 0)
        {
            Score += Least(thirds, ShapeMost) + Least(lengths, seen.Length < length ? ShorterMost : BesideMost);
            return;
        }

        if (climbs)
        {
            // A climb may rest for a moment below its end.
            Score += Least(thirds, ShapeMost) + Least(lengths, ShapeMost);
            Score += Climbs(seen.Height, seen.After, level, RiseOfStart) ? 0 : ClimbMost;
        }
        else
        {
            Score += thirds + lengths + Square(seen.KneePart - numbers[at + (int)ToolFigure.Knee], KneeUsual);
            int first = numbers[at + (int)ToolFigure.First];
            stages = (first > 0) != (seen.First > 0) ? StagesCost : 0;
            Score += stages;
        }

        if (climbs || away == 0)
        {
            return;
        }

        // The start alone tells it, where its load is another one.
        int cut = (start * CutWeight) + shape + stages;
        bool isCut = false;
        if (numbers[at] < Clipped && level < least + (least / 2) && level > most - (most / 3))
        {
            cut += LoadCosts;
        }
        else if (level > most && level / CutTimes < most / CutTimesOf)
        {
            cut += CutCosts;
            isCut = true;
        }
        else
        {
            return;
        }

        if (cut < Score)
        {
            Score = cut;
            IsCut = isCut;
        }
    }

    /// <summary>Tells whether a start is so much like a tool's that it is surely that one.</summary>
    /// <param name="book">The tools.</param>
    /// <param name="place">Place of the tool, not an empty one.</param>
    /// <param name="seen">What the start showed; its level is known.</param>
    /// <returns>True when it is.</returns>
    public static bool IsSure(ToolBook book, int place, ToolFigures seen)
    {
        int[] numbers = book.Numbers;
        int at = place * ToolBook.Figures;
        int height = numbers[at];
        int after = numbers[at + (int)ToolFigure.After];
        int least = numbers[at + (int)ToolFigure.Least];
        int most = numbers[at + (int)ToolFigure.Most];
        int third = numbers[at + (int)ToolFigure.Third];
        int half = numbers[at + (int)ToolFigure.Half];
        int length = numbers[at + (int)ToolFigure.Length];
        int spread = 2 * numbers[at + (int)ToolFigure.AfterSpread];
        int longer = seen.Length - length;
        int away = seen.Level < least ? Part(least - seen.Level, least)
            : seen.Level > most ? Part(seen.Level - most, most)
            : 0;
        int thirds = Square(seen.Third - third, ThirdUsual + (third / 5) + (ThirdNoise / (seen.Level + 1)));
        int score = Square(Part(seen.Height - height, height), HeightUsual)
            + Square(Part(seen.After - after, after), spread > AfterUsual ? spread : AfterUsual)
            + (Square(away, LevelUsual) / 2) + thirds + Square(seen.Half - half, SureHalfUsual + (half / 3));
        if ((seen.First > 0) != (numbers[at + (int)ToolFigure.First] > 0))
        {
            // A motor behind electronics, or a cut that came at once, may look like a heater from its second onset on.
            return false;
        }

        if (height - most < most >> 4)
        {
            // What begins with all its current neither climbs nor falls, and has only its level and its waveform to be known by.
            int lowest = Least(seen.Level, least);
            int highest = seen.Level > most ? seen.Level : most;
            bool isLevel = away <= SureFlatLevel || Part(highest - lowest, lowest + 1) <= SureFlatRange;
            return seen.Height >= seen.Level - (seen.Level >> 5)
                && IsWithin(seen.After - seen.Level, (seen.Level >> 6) + NoiseMost)
                && score <= SureFlatScore && isLevel && thirds <= SureFlatThird && IsWithin(longer, SureLength);
        }

        return score <= SureSurgeScore && away <= SureLevel && IsWithin(longer, (length * 3 / 4) + SureLength)
            && IsWithin(seen.KneePart - numbers[at + (int)ToolFigure.Knee], SureKnee);
    }

    private static bool IsWithin(int difference, int most)
    {
        return difference <= most && -difference <= most;
    }

    /// <summary>Tells whether a start climbs, as with a soft start.</summary>
    /// <param name="height">Swing at first.</param>
    /// <param name="after">Swing a tenth of a second later.</param>
    /// <param name="level">Settled swing.</param>
    /// <param name="rise">So many eighths more after that tenth of a second are a climb.</param>
    /// <returns>True when it does.</returns>
    public static bool Climbs(int height, int after, int level, int rise)
    {
        return height < level - (level >> 3) || after - height > height / 8 * rise;
    }

    // The angle between two currents is not known while one of them starts.
    private static int Beside(ToolFigures seen, int whole, int level)
    {
        if (seen.Other == 0)
        {
            return 0;
        }

        int apart = whole > level ? whole - level : level - whole;
        int most = whole > level ? whole : level;
        return (int)((long)seen.Other * BesideUsual / whole * apart / most);
    }

    private static int Least(int one, int other)
    {
        return one < other ? one : other;
    }

    private static int Usual(int usual, int spread)
    {
        return SpreadTimes * spread > usual ? SpreadTimes * spread : usual;
    }

    private static int Penalty(int usual, int least)
    {
        return (usual - least) * One / least / 2;
    }

    /// <summary>Tells how much a difference speaks against a tool.</summary>
    /// <param name="difference">The difference.</param>
    /// <param name="usual">What is usual, above 0.</param>
    /// <returns>The square of how many units it is, in parts of <see cref="One"/>.</returns>
    public static int Square(int difference, int usual)
    {
        int away = difference < 0 ? -difference : difference;
        int units = away / MostUnits >= usual ? MostUnits * Unit : away * Unit / usual;
        return units * units;
    }
}
