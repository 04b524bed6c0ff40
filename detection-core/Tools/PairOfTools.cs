namespace NanoDustSwitch.Detection;

/// <summary>
/// Two tools that run together: what each of them draws, and by how much the second one's current leads the first one's. When
/// one has stopped, it tells which, by what has gone and by what remains.
/// </summary>
public sealed class PairOfTools
{
    // What is usual: the first one is within a twentieth of what it was alone. The second one was only seen beside it, and may
    // still have been running up: an eighth. Of both together, which the difference is taken of, so many parts.
    private const int AlonePart = 20;
    private const int SharePart = 8;
    private const int BothPart = 64;
    private const int BothPartOfShare = 32;

    // The share of the third harmonic, and the lead, in parts of 1024. The lead of a small current beside a great one is less
    // sure.
    private const int ThirdUsual = 24;
    private const int ThirdPart = 5;
    private const int MostOfThird = 8 * ToolMatch.One;
    private const int LeadUsual = 200;
    private const int LesserPart = 32;

    // One of them has stopped when it agrees within so much. It may be off by more where the other one is further off by far.
    private const int Most = 18 * ToolMatch.One;
    private const int MostOfAll = 4 * Most;
    private const int TimesMore = 4;

    // It is told which one where one agrees better by so much.
    private const int Margin = ToolMatch.One / 2;

    // A lead of more than this that turns to its opposite is of two tools: a cut draws with the same lead as it ends.
    private const int ClearLead = 300;

    private int _both;
    private int _lead;
    private int _gone;
    private int _goneLead;

    /// <summary>Swing of the first one alone, in sixteenths of a count.</summary>
    public int Alone;

    /// <summary>Swing of the second one's share, in sixteenths of a count.</summary>
    public int Share;

    /// <summary>The first one's share of the third harmonic.</summary>
    public int Third;

    /// <summary>Whether it is the first one that has stopped.</summary>
    public bool IsFirst;

    /// <summary>Whether it is clear which one has stopped.</summary>
    public bool IsClear;

    /// <summary>Gets a value indicating whether the lead alone shows that there were two tools.</summary>
    public bool IsSurelyTwo
    {
        get { return IsFirst && (_lead > ClearLead || _lead < -ClearLead); }
    }

    /// <summary>Begins: the second one has started.</summary>
    /// <param name="line">What was on the line before, carried on, and what is on it now.</param>
    /// <param name="both">Swing of both together.</param>
    public void Begin(SteadyPhasor line, int both)
    {
        _both = both;
        Share = line.Difference(both);
        Alone = line.Carried(both);
        _lead = Lead(line, both, Share, Alone);
    }

    /// <summary>Measures what has gone.</summary>
    /// <param name="line">What was on the line before, carried on, and what is on it now.</param>
    /// <param name="rest">Swing of what remains.</param>
    /// <returns>Swing of what has gone.</returns>
    public int Measure(SteadyPhasor line, int rest)
    {
        int both = line.Carried(rest);
        Share += both - _both;
        _both = both;
        _gone = line.Difference(rest);
        _goneLead = -Lead(line, rest, _gone, rest);
        return _gone;
    }

    /// <summary>Judges which one has stopped.</summary>
    /// <param name="rest">Swing of what remains.</param>
    /// <param name="third">Its share of the third harmonic.</param>
    /// <returns>False when neither has: one of them draws another current than it did.</returns>
    public bool HasStopped(int rest, int third)
    {
        int alone = (Alone / AlonePart) + (_both / BothPart);
        int share = (Share / SharePart) + (_both / BothPartOfShare);
        int lead = LeadUsual + (_both / (((_gone < rest ? _gone : rest) / LesserPart) + 1));
        int thirds = ToolMatch.Square(third - Third, ThirdUsual + (Third / ThirdPart));
        int second = Apart(rest - Alone, alone) + Apart(_gone - Share, share) + ToolMatch.Square(_goneLead - _lead, lead)
            + (thirds < MostOfThird ? thirds : MostOfThird);
        int first = Apart(_gone - Alone, alone) + Apart(rest - Share, share) + ToolMatch.Square(_goneLead + _lead, lead);
        IsFirst = first < second;
        int best = IsFirst ? first : second;
        int other = IsFirst ? second : first;
        IsClear = other - best >= Margin;
        return best <= Most || (best <= MostOfAll && other / TimesMore >= best);
    }

    /// <summary>Takes note that both go on, and draw another current together.</summary>
    /// <param name="both">Swing of both together.</param>
    public void GoOn(int both)
    {
        Share += both - _both;
        _both = both;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _both = tape.Number(_both);
        _lead = tape.Number(_lead);
        _gone = tape.Number(_gone);
        _goneLead = tape.Number(_goneLead);
        Alone = tape.Number(Alone);
        Share = tape.Number(Share);
        Third = tape.Number(Third);
        IsFirst = tape.Flag(IsFirst);
        IsClear = tape.Flag(IsClear);
    }

    private static int Lead(SteadyPhasor line, int now, int one, int other)
    {
        return (int)(line.Lead(now) * ToolFigures.Whole / (((long)one * other) + 1));
    }

    private static int Apart(int difference, int usual)
    {
        return ToolMatch.Square(difference, usual > 1 ? usual : 1);
    }
}
