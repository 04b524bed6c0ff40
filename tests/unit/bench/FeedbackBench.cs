using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>
/// A feedback watch under test. Tool and vacuum draw what the test says, and a relay, whose contact closes and opens some time
/// after the command, switches the vacuum.
/// </summary>
internal sealed class FeedbackBench
{
    public const int Least = 400;
    public const int FullScale = 4095;

    private const int CloseMicroseconds = 20000;
    private const int OpenMicroseconds = 320000;

    public readonly NoticeQueue Notices = new NoticeQueue();
    public readonly FeedbackWatch Watch;

    /// <summary>
    /// Swings of the tool and of the vacuum, in sixteenths of a count. The vacuum's is 0 when its wire does not run through the
    /// tool's sensor.
    /// </summary>
    public int Tool;
    public int Vacuum;

    public bool Wants;
    public bool IsProved;
    public int Probes;
    public long Now;

    /// <summary>
    /// A second watch, which took over the state of the first from a tape and sees the same from then on; and whether it has ever
    /// decided anything else.
    /// </summary>
    public FeedbackWatch Twin;
    public bool Differs;

    private bool _hasTwinProved;
    private bool _isClosed;
    private bool _wasProbing;
    private long _changed = -10000000;
    private int _swing;

    public FeedbackBench()
    {
        Watch = new FeedbackWatch(Notices, FullScale);
    }

    public void MakeTwin()
    {
        StateTape tape = new StateTape();
        tape.Write();
        Watch.Exchange(tape);
        tape.Read();
        Twin = new FeedbackWatch(new NoticeQueue(), FullScale);
        Twin.Exchange(tape);
    }

    /// <summary>The vacuum is switched on for a time and then off, as by hand. A second later its current has gone.</summary>
    public void Use(int milliseconds)
    {
        Wants = true;
        Run(milliseconds);
        Wants = false;
        Run(1000);
    }

    public void Run(int milliseconds)
    {
        for (long until = Now + (milliseconds * 1000L); Now < until;)
        {
            Step();
        }
    }

    private void Step()
    {
        Now += Bucket.Microseconds;
        bool closed = Wants && !Watch.IsProbing;
        if (closed != _isClosed)
        {
            _isClosed = closed;
            _changed = Now;
            if (closed)
            {
                Watch.NoteClosing(_swing, Least, Now);
                Twin?.NoteClosing(_swing, Least, Now);
            }
            else
            {
                Watch.NoteOpening(Now);
                Twin?.NoteOpening(Now);
            }
        }

        bool isFed = Now - _changed < (_isClosed ? CloseMicroseconds : OpenMicroseconds) ? !_isClosed : _isClosed;
        _swing = Tool + (isFed ? Vacuum : 0);
        if (Watch.IsWatching && Watch.Accept(_swing, true, Now))
        {
            IsProved = true;
        }

        if (Twin != null)
        {
            _hasTwinProved = (Twin.IsWatching && Twin.Accept(_swing, true, Now)) || _hasTwinProved;
            Differs = Differs || _hasTwinProved != IsProved
                || Twin.IsProbing != Watch.IsProbing || Twin.IsWatching != Watch.IsWatching;
        }

        Probes += Watch.IsProbing && !_wasProbing ? 1 : 0;
        _wasProbing = Watch.IsProbing;
    }
}
