namespace NanoDustSwitch.Detection;

/// <summary>
/// A second tool that starts and stops beside one that runs, seen by the step in the current. Which one it is is guessed from
/// its start and from its share of the current.
/// </summary>
/// <remarks>It does a little with each of the buckets that it is given, so that no bucket is dear.</remarks>
public sealed class SecondTool
{
    private const int None = ToolGuess.None;

    // What rises above the greatest power so far by a quarter may start. That greatest is forgotten by a sixteenth in 0.2 s.
    private const int RiseShift = 2;
    private const int ForgetShift = 4;
    private const int MostPower = int.MaxValue / 2;

    // Looks in a row that agree make a change. One that was not seen to begin may be a soft start at its beginning.
    private const int LooksToBelieve = 2;
    private const int LooksUnseen = 6;

    // The tool agrees within so much, and better than the next one by so much. What starts without a surge may be a cut.
    private const int MostScore = 12 * ToolMatch.One;
    private const int MostWithoutSurge = 8 * ToolMatch.One;
    private const int Margin = 2 * ToolMatch.One;

    // What has this much of the third harmonic, in parts of 1024 of the swing, charges a capacitor or is cut by a dial: its
    // current changes by itself.
    private const int NarrowPulses = 400;

    // A surge stands this much above what follows: of both together, and of the second one alone. A cut does not, and does not
    // begin below half of it either.
    private const int SurgeShift = 3;
    private const int SurgePart = 5;

    // What is done one after the other, a step with each bucket.
    private const int ToLook = 0;
    private const int ToWeigh = 1;
    private const int ToDecide = 2;
    private const int ToMeasure = 3;
    private const int ToCompare = 4;
    private const int ToSeparate = 5;
    private const int ToAsk = 6;

    private readonly SteadyPhasor _line = new SteadyPhasor();
    private readonly PairOfTools _pair = new PairOfTools();
    private readonly ToolFigures _seen;
    private readonly ToolBook _book;
    private readonly ToolGuess _guess;
    private readonly NoticeQueue _notices;
    private long _lookedAt;
    private long _risenAt;
    private long _since;
    private int _mostPower;
    private int _steadyLooks;
    private int _swing;
    private int _step = None;
    private int _at;
    private int _best;
    private int _bestScore;
    private int _nextScore;
    private int _score;
    private bool _hasRisen;
    private bool _hasStart;
    private bool _hasSurge;
    private bool _climbs;
    private bool _isStop;

    /// <summary>The time of the next bucket to be taken, in microseconds; 0 for the very next one.</summary>
    public long NextLook;

    /// <summary>The power from which on something may start; the greatest number while nothing is looked for.</summary>
    public int RisePower = int.MaxValue;

    /// <summary>Whether a running tool is looked at for a second one.</summary>
    public bool IsFollowing;

    /// <summary>Whether the start of a second tool is watched.</summary>
    public bool IsStarting;

    /// <summary>Whether a second tool runs beside the first one.</summary>
    public bool IsThere;

    /// <summary>Place of the second one; <see cref="ToolGuess.None"/> where it is not known.</summary>
    public int Tool = None;

    /// <summary>
    /// Place of a tool that ran beside the present one since the vacuum went on; <see cref="ToolGuess.None"/> for none.
    /// </summary>
    public int Other = None;

    /// <summary>Initializes a new instance of the <see cref="SecondTool"/> class.</summary>
    /// <param name="book">The tools.</param>
    /// <param name="seen">What the watched start of a second tool shows, together with the first one.</param>
    /// <param name="guess">Which one the first tool is.</param>
    /// <param name="notices">Where it is told that one has stopped.</param>
    public SecondTool(ToolBook book, ToolFigures seen, ToolGuess guess, NoticeQueue notices)
    {
        _book = book;
        _seen = seen;
        _guess = guess;
        _notices = notices;
    }

    /// <summary>Begins to look, when the first tool has settled.</summary>
    /// <param name="third">The first tool's share of the third harmonic.</param>
    /// <param name="from">When to begin, in microseconds: with a bucket after which three others have little to do.</param>
    public void Begin(int third, long from)
    {
        IsFollowing = true;
        IsStarting = false;
        IsThere = false;
        Tool = None;
        _pair.Third = third;
        _hasRisen = false;
        _step = None;
        _mostPower = int.MaxValue;
        RisePower = int.MaxValue;
        _steadyLooks = 0;
        _line.Begin();
        _lookedAt = from;
        NextLook = from + SteadyPhasor.ReadStep;
    }

    /// <summary>Ends.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void End(long now)
    {
        if (IsThere && Tool != None)
        {
            _book.Count(Tool, now - _since);
        }

        IsFollowing = false;
        IsStarting = false;
        IsThere = false;
    }

    /// <summary>Takes note that the start of a second tool is watched from now on.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void BeginStart(long now)
    {
        IsStarting = true;
        _risenAt = now;
    }

    /// <summary>Takes note that the start of a second tool was watched to its end.</summary>
    public void EndStart()
    {
        IsStarting = false;
        IsThere = false;
        _hasRisen = true;
        RisePower = int.MaxValue;
    }

    /// <summary>Does the next step.</summary>
    /// <param name="window">A full window.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Step(SwingWindow window, long now)
    {
        if (_step != None)
        {
            Go(window, now);
            return;
        }

        long at = NextLook;
        if (now == at)
        {
            _line.Read(window);
        }

        NextLook = at + SteadyPhasor.ReadStep;
        if (at - _lookedAt == SteadyPhasor.Step)
        {
            _lookedAt = at;
            _step = ToLook;
            NextLook = 0;
        }
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _line.Exchange(tape);
        _pair.Exchange(tape);
        _lookedAt = tape.Number(_lookedAt);
        _risenAt = tape.Number(_risenAt);
        _since = tape.Number(_since);
        _mostPower = tape.Number(_mostPower);
        NextLook = tape.Number(NextLook);
        RisePower = tape.Number(RisePower);
        _steadyLooks = tape.Number(_steadyLooks);
        _swing = tape.Number(_swing);
        _step = tape.Number(_step);
        _at = tape.Number(_at);
        _best = tape.Number(_best);
        _bestScore = tape.Number(_bestScore);
        _nextScore = tape.Number(_nextScore);
        _score = tape.Number(_score);
        _hasRisen = tape.Flag(_hasRisen);
        _hasStart = tape.Flag(_hasStart);
        _hasSurge = tape.Flag(_hasSurge);
        _climbs = tape.Flag(_climbs);
        _isStop = tape.Flag(_isStop);
        IsFollowing = tape.Flag(IsFollowing);
        IsStarting = tape.Flag(IsStarting);
        IsThere = tape.Flag(IsThere);
        Tool = tape.Number(Tool);
        Other = tape.Number(Other);
    }

    // What the last look has shown.
    private void Decide(SwingWindow window)
    {
        bool isStart = _hasRisen && !IsThere;

        // Of a small tool beside a great one little is left after its surge.
        bool hasSurge = isStart && _seen.Height - _seen.Level > _seen.Level >> SurgeShift;
        if (_line.IsSame && !hasSurge)
        {
            _line.Follow();
            _steadyLooks = 0;
            if ((_line.IsEven || _hasRisen) && !(IsThere && _hasStart))
            {
                FollowPower(window.GreatestPower(0));
            }

            return;
        }

        if (!_line.IsSame && !_line.IsSteady)
        {
            _steadyLooks = 0;
            return;
        }

        bool isMore = hasSurge || _line.IsMore;
        if (++_steadyLooks < (isMore && !isStart && !IsThere ? LooksUnseen : LooksToBelieve))
        {
            return;
        }

        _steadyLooks = 0;
        _isStop = !isMore;
        if (_isStop == IsThere)
        {
            _step = ToMeasure;
            NextLook = 0;
        }
        else
        {
            _line.Take();
            _hasRisen = false;
        }
    }

    // Until the next read.
    private void Rest()
    {
        _step = None;
        NextLook = _lookedAt + SteadyPhasor.ReadStep;
    }

    private void FollowPower(int power)
    {
        int most = power < MostPower ? power + (power >> RiseShift) : int.MaxValue;
        int before = _mostPower - (_mostPower >> ForgetShift);
        if (_hasRisen && before < MostPower)
        {
            // It was noise, or a tool's that went at once.
            before += before >> RiseShift;
        }

        _mostPower = most > before || _mostPower == int.MaxValue ? most : before;
        RisePower = _mostPower;
        _hasRisen = false;
    }

    private void Go(SwingWindow window, long now)
    {
        switch (_step)
        {
            case ToLook:
                _line.Look();
                _step = ToWeigh;
                break;
            case ToWeigh:
                if (_line.Weigh())
                {
                    _step = ToDecide;
                }
                else
                {
                    Rest();
                }

                break;
            case ToDecide:
                Rest();
                Decide(window);
                break;
            case ToMeasure:
                _swing = SwingWindow.SwingOf(2 * window.MeanOf(window.Halves, 0), _swing);
                _step = ToCompare;
                break;
            case ToCompare:
                Compare(window);
                break;
            case ToSeparate:
                Separate();
                break;
            default:
                if (_at < ToolBook.Places)
                {
                    Ask();
                }
                else
                {
                    Rest();
                    _line.Watch(!_isStop);
                    _line.Take();
                    Conclude(now);
                }

                break;
        }
    }

    private void Compare(SwingWindow window)
    {
        if (!_isStop)
        {
            _pair.Begin(_line, _swing);
            _seen.Other = _pair.Alone;
            _seen.Third = -1;
            _hasStart = _hasRisen;
        }
        else
        {
            _seen.Third = window.ThirdHarmonic();
            _seen.Level = _pair.Measure(_line, _swing);
        }

        _step = ToSeparate;
    }

    private void Separate()
    {
        if (!_isStop)
        {
            // By how much the cosine was not the usual one.
            int more = _pair.Share - SteadyPhasor.Without(_swing, _pair.Alone);
            _seen.Height = AtLeastOne(SteadyPhasor.Without(_seen.Height, _pair.Alone) + more);
            _seen.After = AtLeastOne(SteadyPhasor.Without(_seen.After, _pair.Alone) + more);
            _seen.Level = _pair.Share;
        }
        else if (!_pair.HasStopped(_swing, _seen.Third) || !_line.IsSharp
            || !((_seen.Third < NarrowPulses && (_hasSurge || _pair.IsFirst)) || _line.HasFallenAtOnce()))
        {
            _pair.GoOn(_swing);
            Rest();
            _line.Take();
            return;
        }
        else if (_pair.IsFirst)
        {
            _seen.Level = _swing;
        }
        else
        {
            _seen.Third = -1;
        }

        _step = ToAsk;
        _at = 0;
        _best = None;
        _bestScore = int.MaxValue;
        _nextScore = int.MaxValue;
    }

    private void Ask()
    {
        int at = _at++;
        if (!_hasStart || at == _guess.Tool || !_book.IsKnown(at))
        {
            return;
        }

        ToolMatch match = _guess.Match;
        match.Compare(_book, at, _seen);
        int score = match.Score;
        if (score < _bestScore)
        {
            _nextScore = _bestScore;
            _best = at;
            _bestScore = score;
        }
        else if (score < _nextScore)
        {
            _nextScore = score;
        }
    }

    private void Conclude(long now)
    {
        if (!_isStop)
        {
            _hasSurge = _hasStart && _seen.Height - _seen.Level > _seen.Level / SurgePart;
            _climbs = _hasStart && _seen.After < _seen.Level / 2;
        }

        bool isSafe = _hasSurge || _climbs || (_isStop && _pair.IsFirst);
        bool isKnown = _bestScore <= (isSafe ? MostScore : MostWithoutSurge) && _nextScore - _bestScore >= Margin;
        if (!_isStop)
        {
            IsThere = true;
            Tool = isKnown ? _best : None;
            Other = isKnown ? _best : Other;
            _score = _bestScore;
            _since = _hasStart ? _risenAt : now;
            return;
        }

        // Of the guess at its start and that at the stop the better one counts.
        bool keeps = Tool != None && (!isKnown || _bestScore > _score);
        Stop(keeps ? Tool : isKnown ? _best : None, now);
    }

    private void Stop(int second, long now)
    {
        Tool = None;
        IsThere = false;
        _hasRisen = false;
        _mostPower = int.MaxValue;
        if (second == None && !_hasSurge && !_pair.IsSurelyTwo)
        {
            // It may have been a cut.
            return;
        }

        bool isClear = _pair.IsClear;
        bool isFirst = _pair.IsFirst;
        int stopped = !isClear ? None : isFirst ? _guess.Tool : second;
        if (stopped != None)
        {
            _notices.Add(NoticeKind.ToolStopped, stopped + 1, 0, 0, now);
        }

        Other = second != None ? second : Other;
        if (isFirst || !isClear)
        {
            Other = _guess.Tool != None ? _guess.Tool : Other;
            _guess.GoOver(isClear ? second : None, _since, now);
            _pair.Third = _seen.Third;
        }
        else if (second != None)
        {
            _book.Count(second, now - _since);
        }
    }

    private static int AtLeastOne(int swing)
    {
        return swing > 1 ? swing : 1;
    }
}
