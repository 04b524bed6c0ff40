namespace NanoDustSwitch.Detection;

/// <summary>
/// Guesses which tool it is that runs. It asks the book for one place at a bucket, which costs the board little, and says
/// nothing where two tools agree about as well.
/// </summary>
public sealed class ToolGuess
{
    /// <summary>Stands for no tool.</summary>
    public const int None = -1;

    /// <summary>A known tool must agree within so much.</summary>
    public const int MostScore = 8 * ToolMatch.One;

    /// <summary>By so much a known tool must agree better than any other.</summary>
    public const int Margin = ToolMatch.One * 7 / 2;

    // One that is not known yet may be this tool too, and does not count before it agrees better by so much.
    private const int NewMargin = 6 * ToolMatch.One;

    // A start is learned for the tool that it agrees with within so much, or else begins a new one: within less where the tool is
    // known, lest another one be taken for it, and within more where little is known of it.
    private const int LearnScore = ToolMatch.One * 11 / 2;
    private const int LearnNewScore = 9 * ToolMatch.One;

    // Two places that a start agrees with as well as this are of one tool.
    private const int MergeScore = 4 * ToolMatch.One;

    private readonly ToolBook _book;
    private int _at;
    private int _known;
    private int _knownScore;
    private bool _isKnownCut;
    private int _otherScore;
    private int _nearest;
    private int _nearestScore;
    private int _next;
    private int _nextScore;
    private bool _isNearestCut;
    private bool _learns;
    private long _since;

    /// <summary>Compares a start with a tool.</summary>
    public readonly ToolMatch Match = new ToolMatch();

    /// <summary>Place of the tool in the book; <see cref="None"/> where it is not known.</summary>
    public int Tool = None;

    /// <summary>Whether it is surely that tool.</summary>
    public bool IsSure;

    /// <summary>Whether nothing is learned from the start.</summary>
    public bool TeachesNothing;

    /// <summary>Whether the book is being asked.</summary>
    public bool IsAsking;

    /// <summary>Place that the start was learned for; <see cref="None"/> until then.</summary>
    public int Learned = None;

    /// <summary>Initializes a new instance of the <see cref="ToolGuess"/> class.</summary>
    /// <param name="book">The tools.</param>
    public ToolGuess(ToolBook book)
    {
        _book = book;
    }

    /// <summary>Begins at a start.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Begin(long now)
    {
        _since = now;
        Tool = None;
        IsSure = false;
        TeachesNothing = false;
        IsAsking = false;
        Learned = None;
    }

    /// <summary>
    /// Begins at a start soon after a stop. It is mostly the same tool's, and counts as that until it is known for another one's;
    /// its motor may still turn, so that it tells less than others.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    public void BeginAgain(long now)
    {
        int tool = Tool;
        Begin(now);
        Tool = tool;
        TeachesNothing = true;
    }

    /// <summary>Begins to ask the book.</summary>
    /// <param name="learns">Whether the start is over, and is to be learned.</param>
    public void Ask(bool learns)
    {
        IsAsking = true;
        _learns = learns;
        _at = 0;
        _known = None;
        _knownScore = int.MaxValue;
        _otherScore = int.MaxValue;
        _nearest = None;
        _nearestScore = int.MaxValue;
        _nextScore = int.MaxValue;
    }

    /// <summary>Asks for the next place.</summary>
    /// <param name="seen">What the start has shown; its level is known.</param>
    /// <returns>True when there is an answer.</returns>
    public bool Step(ToolFigures seen)
    {
        if (seen.Level == int.MaxValue)
        {
            // A new onset has come in between.
            IsAsking = false;
            return false;
        }

        int[] numbers = _book.Numbers;
        int at = _at;
        while (at < ToolBook.Places && numbers[at * ToolBook.Figures] == 0)
        {
            at++;
        }

        _at = at + 1;
        if (at < ToolBook.Places)
        {
            Compare(at, seen);
            return false;
        }

        if (at == ToolBook.Places)
        {
            Answer(seen);
        }
        else
        {
            Learn(seen, at);
        }

        return !IsAsking;
    }

    private void Answer(ToolFigures seen)
    {
        IsAsking = _learns;
        bool isKnown = _knownScore <= MostScore && _otherScore - _knownScore >= Margin
            && _knownScore - _nearestScore < NewMargin;
        Tool = isKnown ? _known : TeachesNothing ? Tool : None;
        IsSure = isKnown && !_isKnownCut && ToolMatch.IsSure(_book, _known, seen);
    }

    // A step in each bucket.
    private void Learn(ToolFigures seen, int step)
    {
        if (step == ToolBook.Places + 1)
        {
            if (_nearest == None || _nearestScore > MostToLearn(_nearest))
            {
                _nearest = _book.Begin(seen);
                TeachesNothing = _nearest == None;
                IsAsking = !TeachesNothing;
            }
        }
        else if (step == ToolBook.Places + 2)
        {
            _book.Learn(seen, _nearest, _isNearestCut);
            Learned = _nearest;
            IsAsking = _nextScore <= MergeScore;
        }
        else
        {
            IsAsking = false;
            Learned = _book.Join(_nearest, _next);
            Tool = Tool != None && _book[Tool, ToolFigure.Height] == 0 ? Learned : Tool;
        }
    }

    /// <summary>Counts how long the tool ran, which has stopped.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Stop(long now)
    {
        if (Tool != None && _since > 0)
        {
            _book.Count(Tool, now - _since);
        }

        _since = 0;
    }

    /// <summary>Goes over to another tool: this one has stopped, and the other one still runs.</summary>
    /// <param name="tool">Place of the other one; <see cref="None"/> where it is not known.</param>
    /// <param name="since">Since when it runs, in microseconds.</param>
    /// <param name="now">Time in microseconds.</param>
    public void GoOver(int tool, long since, long now)
    {
        Stop(now);
        Tool = tool;
        IsSure = false;
        _since = since;
    }

    /// <summary>Tells the run-on of a tool.</summary>
    /// <param name="tool">Its place; <see cref="None"/> where it is not known.</param>
    /// <param name="asSet">That of the setting, in ms.</param>
    /// <returns>Its own in ms, where a person asked for one, or that of the setting.</returns>
    public int RunOn(int tool, int asSet)
    {
        int wish = tool == None ? 0 : _book[tool, ToolFigure.Wish];
        return wish > 0 ? wish - 1 : asSet;
    }

    /// <summary>Gets a value indicating whether it is surely a load that needs no vacuum.</summary>
    public bool NeedsNone
    {
        get { return IsSure && _book[Tool, ToolFigure.Wish] == ToolBook.NoVacuum; }
    }

    /// <summary>Tells whether a start resembles one of a tool that needs no vacuum.</summary>
    /// <param name="seen">What it has shown of its first tenth of a second.</param>
    /// <returns>True when it is worth waiting for what follows.</returns>
    public bool MayNeedNone(ToolFigures seen)
    {
        for (int i = 0; i < ToolBook.Places; i++)
        {
            if (_book[i, ToolFigure.Wish] == ToolBook.NoVacuum && _book.IsKnown(i)
                && ToolMatch.StartScore(_book, i, seen) <= MostScore)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _at = tape.Number(_at);
        _known = tape.Number(_known);
        _knownScore = tape.Number(_knownScore);
        _isKnownCut = tape.Flag(_isKnownCut);
        _otherScore = tape.Number(_otherScore);
        _nearest = tape.Number(_nearest);
        _nearestScore = tape.Number(_nearestScore);
        _next = tape.Number(_next);
        _nextScore = tape.Number(_nextScore);
        _isNearestCut = tape.Flag(_isNearestCut);
        _learns = tape.Flag(_learns);
        _since = tape.Number(_since);
        Tool = tape.Number(Tool);
        IsSure = tape.Flag(IsSure);
        TeachesNothing = tape.Flag(TeachesNothing);
        IsAsking = tape.Flag(IsAsking);
        Learned = tape.Number(Learned);
    }

    // A load that needs no vacuum would start it under a second number.
    private int MostToLearn(int place)
    {
        return !_book.IsKnown(place) ? LearnNewScore
            : _book[place, ToolFigure.Wish] == ToolBook.NoVacuum ? MostScore
            : LearnScore;
    }

    // Of two that need no vacuum it is all the same which one it is.
    private bool IsOneWish(int at)
    {
        return _known != None && _book[at, ToolFigure.Wish] == ToolBook.NoVacuum
            && _book[_known, ToolFigure.Wish] == ToolBook.NoVacuum;
    }

    private void Compare(int at, ToolFigures seen)
    {
        ToolMatch match = Match;
        match.Compare(_book, at, seen);
        int score = match.Score;
        if (score < _nearestScore)
        {
            _next = _nearest;
            _nextScore = _nearestScore;
            _nearest = at;
            _nearestScore = score;
            _isNearestCut = match.IsCut;
        }
        else if (score < _nextScore)
        {
            _next = at;
            _nextScore = score;
        }

        if (!_book.IsKnown(at))
        {
            return;
        }

        if (score < _knownScore)
        {
            _otherScore = IsOneWish(at) ? _otherScore : _knownScore;
            _known = at;
            _knownScore = score;
            _isKnownCut = match.IsCut;
        }
        else if (score < _otherScore && !IsOneWish(at))
        {
            _otherScore = score;
        }
    }
}
