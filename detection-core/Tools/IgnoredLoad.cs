namespace NanoDustSwitch.Detection;

/// <summary>
/// A load that runs and needs no vacuum. It is looked at for as long as it runs: as soon as the line shows more than that load
/// alone may draw, or a step, a tool may run beside it, and the vacuum follows again.
/// </summary>
public sealed class IgnoredLoad
{
    // From one look to the next: 20 ms. Steps are looked for every 0.1 s, from one moment of the mains to the same one.
    private const int Looks = 8;
    private const int LooksAStep = 5;

    // So much more than it was ever seen to draw, and so much less, may be it. A second tool of another kind shows as a step.
    private const int MoreShift = 3;
    private const int LessShift = 2;

    // What remains after the other tool's stop is the load when it is within a sixteenth of what it was, for half a second.
    private const int SameShift = 4;
    private const int SameLooks = 25;
    private const int MoreLooks = 5;
    private const int StepsToBelieve = 2;

    // More than anything turns by: the first look only learns by how much.
    private const int NoTurn = 1 << 20;

    // The last two, so that a step is seen twice; what is only a wild look is not.
    private readonly Phasor _even = new Phasor();
    private readonly Phasor _odd = new Phasor();
    private int _mostPower;
    private int _leastPower;
    private int _before;
    private int _moreLooks;
    private int _sameLooks;
    private int _looks;
    private int _turn;
    private int _step;
    private int _steps;
    private bool _isOdd;
    private bool _hasStepped;

    /// <summary>Whether such a load runs, alone or beside a tool.</summary>
    public bool IsThere;

    /// <summary>Whether it runs alone, so that the vacuum takes no notice.</summary>
    public bool IsAlone;

    /// <summary>Its place in the book.</summary>
    public int Place;

    /// <summary>Begins: the load was recognised.</summary>
    /// <param name="book">The tools.</param>
    /// <param name="place">Its place.</param>
    /// <param name="window">A valid window.</param>
    public void Begin(ToolBook book, int place, SwingWindow window)
    {
        int most = book[place, ToolFigure.Most];
        int least = book[place, ToolFigure.Least];
        _before = SwingWindow.SwingOf(window.SmoothPower(), most);
        most = _before > most ? _before : most;
        least = _before < least ? _before : least;
        _mostPower = SwingWindow.PowerOf(most + (most >> MoreShift));
        _leastPower = SwingWindow.PowerOf(least - (least >> LessShift));
        Place = place;
        IsThere = true;
        IsAlone = true;
        _moreLooks = 0;
        _looks = 0;
        _turn = NoTurn;
        _steps = 0;
        _isOdd = false;
        _even.Take(window);
        _odd.Take(window);
    }

    /// <summary>Takes a bucket while such a load runs.</summary>
    /// <param name="window">The window.</param>
    /// <param name="isRunning">Whether anything runs on the line.</param>
    /// <param name="least">Swing of the smallest tool, in sixteenths of a count.</param>
    /// <returns>Whether a tool runs that the vacuum follows.</returns>
    public bool Follow(SwingWindow window, bool isRunning, int least)
    {
        if (!isRunning)
        {
            End();
            return false;
        }

        if ((window.Place & (Looks - 1)) == 0 && window.IsValid)
        {
            Look(window, least);
        }

        return !IsAlone;
    }

    /// <summary>Ends.</summary>
    public void End()
    {
        IsThere = false;
        IsAlone = false;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _even.Exchange(tape);
        _odd.Exchange(tape);
        _mostPower = tape.Number(_mostPower);
        _leastPower = tape.Number(_leastPower);
        _before = tape.Number(_before);
        _moreLooks = tape.Number(_moreLooks);
        _sameLooks = tape.Number(_sameLooks);
        _looks = tape.Number(_looks);
        _turn = tape.Number(_turn);
        _step = tape.Number(_step);
        _steps = tape.Number(_steps);
        _isOdd = tape.Flag(_isOdd);
        _hasStepped = tape.Flag(_hasStepped);
        Place = tape.Number(Place);
        IsThere = tape.Flag(IsThere);
        IsAlone = tape.Flag(IsAlone);
    }

    private void Look(SwingWindow window, int least)
    {
        int step = 0;
        if (++_looks >= LooksAStep)
        {
            // A mains that is off its frequency turns a steady current by as much every time.
            _looks = 0;
            _isOdd = !_isOdd;
            int move = (_isOdd ? _odd : _even).Move(window);
            step = move - _turn - (_turn >> 1);
            if (step < least)
            {
                _turn = move;
                _steps = 0;
            }
            else
            {
                _steps++;
            }
        }

        int power = window.SmoothPower();
        int swing = SwingWindow.SwingOf(power, _before);
        if (IsAlone)
        {
            _moreLooks = power > _mostPower || power < _leastPower ? _moreLooks + 1 : 0;
            if (_moreLooks >= MoreLooks || _steps >= StepsToBelieve)
            {
                IsAlone = false;
                _step = step > least ? step : least;
                _steps = 0;
                _sameLooks = 0;
                _hasStepped = false;
                return;
            }

            if (_moreLooks == 0)
            {
                // What comes beside it must not lift what is known of it.
                _before += (swing - _before) >> SameShift;
            }

            return;
        }

        _hasStepped |= step >= _step / 2;
        int away = swing > _before ? swing - _before : _before - swing;
        _sameLooks = _hasStepped && away <= _before >> SameShift ? _sameLooks + 1 : 0;
        IsAlone = _sameLooks >= SameLooks;
    }
}
