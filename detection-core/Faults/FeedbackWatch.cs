namespace NanoDustSwitch.Detection;

/// <summary>
/// Finds out whether the vacuum's own current is seen on the tool's line, because its wire runs through the tool's sensor or
/// close by. If it is, the switch takes the vacuum for a running tool, and the vacuum never stops.
/// </summary>
/// <remarks>
/// The sign of it is a current that stays the same for long: the tool has stopped, and what is left is the vacuum's. A tool that
/// idles looks alike. So comes the test, a look: the relay opens for a moment. If the current is the vacuum's own, it must go all
/// at once, as long after the command as the contact takes, stay away, and come back with the vacuum. Three such looks in a row
/// with the same delay prove it. A level that stayed is a tool's, and is remembered.
/// <para>
/// How long the current must be steady before a look depends on what has been seen. As long as nobody knows what the vacuum does
/// to the line, a few seconds are enough. Once the line has been without a tool while the vacuum ran, it must also be a part of
/// the current that came as the relay closed, or be steady for minutes. This class never closes the relay, it only opens it.
/// </para>
/// </remarks>
public sealed class FeedbackWatch
{
    // A tool that has just been let go is often used again within this time. Common practice, no source.
    private const long ShortMicroseconds = 4 * Time.Second;

    // Longer than most tools idle between two cuts; together with the looks less than half a minute.
    private const long LongMicroseconds = 20 * Time.Second;

    // Longer than most cuts are steady; together with the looks less than a minute.
    private const long MinuteMicroseconds = 45 * Time.Second;

    // Far longer than a cut is steady; together with the looks less than three minutes.
    private const long LongestMicroseconds = 150 * Time.Second;

    // After a look at which the current went: the vacuum's start surge is over, which takes 0.7 to 0.9 s to within 15 % in
    // recordings, and a half second was measured after it.
    private const long AgainMicroseconds = 1500000;

    // A vacuum that is slow to start runs by then. Common practice, no source.
    private const long RunUpMicroseconds = 3 * Time.Second;

    // A closing so soon after the beginning of a look goes on with the same run: look and rest of the relay take 1 s as
    // delivered.
    private const long SameRunMicroseconds = 2500000;

    // What comes back with the relay is there within 0.1 s, at least an eighth of it.
    private const int ComeBackShift = 3;

    // Two are not enough: with a user whose tools stop during every second look, two delays were alike by chance once in a few
    // thousand starts.
    private const int GoesToProve = 3;

    // Where it came back later: a vacuum that starts softly, or a hand that switched the tool on again.
    private const int GoesToProveSlowly = 5;

    // The wait for another look at a level that is known doubles up to 80 minutes.
    private const int MostVain = 5;

    private readonly NoticeQueue _notices;
    private readonly SteadyWatch _steady = new SteadyWatch();
    private readonly KnownLevels _known = new KnownLevels();
    private readonly RelayLook _look = new RelayLook();
    private readonly Phasor _phasor = new Phasor();
    private long _closedAt;

    // The least swing that keeps a tool running; and the lowest at which the line has been seen without a tool while the vacuum
    // ran, int.MaxValue until then.
    private int _least;
    private int _quietAt = int.MaxValue;

    // The current that came as the relay closed, as a swing.
    private int _jump;

    // Looks at this level that did not show the current to go.
    private int _vain;

    // Looks in a row at which the same current went after the same delay, and how many prove it; that delay, and the current's
    // swing.
    private int _goes;
    private int _needed;
    private long _lag;
    private int _gone;

    // Whether the relay closes after a look at which the current went.
    private bool _mustComeBack;

    /// <summary>Whether <see cref="Accept"/> has something to look for; else it need not be called.</summary>
    public bool IsWatching;

    /// <summary>Whether <see cref="Accept"/> wants every bucket; else one of eight, with the window at an eighth place.</summary>
    public bool WantsEveryBucket;

    /// <summary>Whether the relay must stay open for a look.</summary>
    public bool IsProbing;

    /// <summary>Initializes a new instance of the <see cref="FeedbackWatch"/> class.</summary>
    /// <param name="notices">Gets a notice of every look.</param>
    public FeedbackWatch(NoticeQueue notices)
    {
        _notices = notices;
    }

    /// <summary>Gets the swing at the beginning of the last look, in sixteenths of a count; 0 until there has been one.</summary>
    public int Level
    {
        get { return _look.Level; }
    }

    /// <summary>Notes that the relay was told to close.</summary>
    /// <param name="window">The window.</param>
    /// <param name="least">Swing below which no tool runs: a vacuum that draws less than this does no harm.</param>
    /// <param name="now">Time in microseconds.</param>
    public void NoteClosing(SwingWindow window, int least, long now)
    {
        bool isSameRun = now - _look.Since < SameRunMicroseconds;
        _steady.Begin(isSameRun, now);
        if (!isSameRun)
        {
            _vain = 0;
            _jump = 0;
        }

        _mustComeBack = isSameRun && _goes > 0;
        _least = least;
        _closedAt = now;
        _phasor.Take(window);
        WantsEveryBucket = window.IsValid;
        IsWatching = true;
    }

    /// <summary>Notes that the relay was told to open.</summary>
    /// <param name="isToolRunning">Whether a tool is seen.</param>
    /// <param name="now">Time in microseconds.</param>
    public void NoteOpening(bool isToolRunning, long now)
    {
        if (IsProbing)
        {
            return;
        }

        if (!isToolRunning && now - _closedAt >= RunUpMicroseconds && _least < _quietAt)
        {
            _quietAt = _least;
        }

        WantsEveryBucket = false;
        IsWatching = false;
    }

    /// <summary>Begins afresh, with no suspicion.</summary>
    public void Reset()
    {
        _goes = 0;
        _vain = 0;
        _quietAt = int.MaxValue;
        _mustComeBack = false;
        IsProbing = false;
        WantsEveryBucket = false;
        IsWatching = false;
    }

    /// <summary>Looks at a bucket.</summary>
    /// <param name="window">The window with this bucket in it.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>True when it is proved that the vacuum feeds the tool's sensor.</returns>
    public bool Accept(SwingWindow window, long now)
    {
        if (IsProbing)
        {
            return _look.IsOver(window, now) && EndLook(now);
        }

        if (WantsEveryBucket && now - _closedAt >= Phasor.Step)
        {
            WantsEveryBucket = false;
            NoteJump(window.IsValid && now - _closedAt == Phasor.Step ? _phasor.Move(window) : 0);
        }

        if (window.IsValid && (window.Place & (SwingWindow.Length - 1)) == 0 && _steady.Add(window.Power, now))
        {
            Judge(window, now);
        }

        return false;
    }

    /// <summary>Writes the state to a tape, or takes it from there.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _steady.Exchange(tape);
        _known.Exchange(tape);
        _look.Exchange(tape);
        _phasor.Exchange(tape);
        _closedAt = tape.Number(_closedAt);
        _least = tape.Number(_least);
        _quietAt = tape.Number(_quietAt);
        _jump = tape.Number(_jump);
        _vain = tape.Number(_vain);
        _goes = tape.Number(_goes);
        _needed = tape.Number(_needed);
        _lag = tape.Number(_lag);
        _gone = tape.Number(_gone);
        _mustComeBack = tape.Flag(_mustComeBack);
        IsWatching = tape.Flag(IsWatching);
        IsProbing = tape.Flag(IsProbing);
        WantsEveryBucket = tape.Flag(WantsEveryBucket);
    }

    // What has come in the first 0.1 s after the closing; 0 where that is not known.
    private void NoteJump(int jump)
    {
        _jump = jump > _jump ? jump : _jump;
        if (_mustComeBack && jump < Level >> ComeBackShift)
        {
            _needed = GoesToProveSlowly;
        }
    }

    // A half second is over.
    private void Judge(SwingWindow window, long now)
    {
        int level = _steady.Level;
        if (level < _least)
        {
            // It went by itself, and has not come back with the vacuum.
            _goes = now - _closedAt >= RunUpMicroseconds ? 0 : _goes;
            return;
        }

        // A current that has changed since the last look is worth another one.
        int vain = SteadyWatch.AreAlike(level, Level) ? _vain : 0;
        bool isDue = _goes > 0 && IsNear(level, Level)
            ? now - _closedAt >= AgainMicroseconds
            : now - _steady.Since >= Wait(level, vain);
        if (isDue)
        {
            _vain = vain;
            IsProbing = true;
            WantsEveryBucket = true;
            _look.Begin(level, window, now);
        }
    }

    // For how long a level must be steady, of which so many looks have not shown that it is the vacuum's.
    private long Wait(int level, int vain)
    {
        if (_known.Has(level))
        {
            return LongestMicroseconds << vain;
        }

        // Something else may have changed meanwhile.
        int again = vain > 0 ? 1 : 0;

        // The start surge of a vacuum is 1.5 to 6 times what it draws later (recordings: 2.8 to 5.8 in the first 0.1 s).
        bool mayBeTheJump = level < _jump >> 1 && level > _jump >> 3;
        if (_quietAt <= _least)
        {
            return (mayBeTheJump ? LongMicroseconds : LongestMicroseconds) << again;
        }

        return (mayBeTheJump || HasFallen(level) ? ShortMicroseconds : MinuteMicroseconds) << again;
    }

    private bool HasFallen(int level)
    {
        int greatest = _steady.Greatest;
        return level < greatest - (greatest >> 2);
    }

    private bool EndLook(long now)
    {
        long lag = _look.Lag;
        _notices.Add(NoticeKind.Probed, lag >= 0 ? 1 : 0, 0, (int)((lag >= 0 ? lag : now - _look.Since) / 1000), now);
        IsProbing = false;
        IsWatching = false;
        WantsEveryBucket = false;
        if (lag < 0)
        {
            _goes = 0;
            _vain = _vain < MostVain ? _vain + 1 : _vain;
            if (_look.HasStayed)
            {
                _known.Note(Level);
            }

            return false;
        }

        // When delay or height is not that of the look before, one of the two was chance, and the row begins again with this
        // one.
        bool isSame = lag - _lag <= RelayLook.SameMicroseconds && _lag - lag <= RelayLook.SameMicroseconds
            && IsNear(Level, _gone);
        _needed = isSame && _goes > 0 ? _needed : GoesToProve;
        _goes = isSame && _goes > 0 ? _goes + 1 : 1;
        _lag = lag;
        _gone = Level;
        return _goes >= _needed;
    }

    private static bool IsNear(int one, int other)
    {
        return one - other < other >> 2 && other - one < other >> 2;
    }
}
