using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>
/// A feedback watch under test. Tool and vacuum draw sines of 50 Hz as the test says, and a relay, whose contact closes and opens
/// some time after the command, switches the vacuum. Currents are swings in sixteenths of a count, angles eighths of a cycle.
/// </summary>
internal sealed class FeedbackBench
{
    private const int CloseMicroseconds = 20000;
    private const int RestMicroseconds = 950000;
    private const int SurgeMicroseconds = 700000;

    // So many readings a bucket, so that its mean keeps a fraction of a count.
    private const int Readings = 64;

    public readonly NoticeQueue Told = new NoticeQueue();
    public readonly FeedbackWatch Watch;

    public int Least = 400;
    public int Tool;
    public int Vacuum;
    public int VacuumAngle;

    /// <summary>How much more the vacuum draws in the first 0.7 s: 3 as recorded ones do, 1 for one that starts softly.</summary>
    public int Surge = 3;

    /// <summary>From the command to open until the contact is open.</summary>
    public int OpenMicroseconds = 280000;

    public bool Wants;
    public bool IsProved;
    public int Looks;
    public long LookedAt;
    public long Now;

    /// <summary>
    /// A second watch, which took over the state of the first from a tape and sees the same from then on; and whether it has ever
    /// decided anything else.
    /// </summary>
    public FeedbackWatch Twin;
    public bool Differs;

    private readonly SwingWindow _window = new SwingWindow();
    private bool _isClosed;
    private bool _isFed;
    private bool _wasProbing;
    private long _changed = -10000000;
    private long _fedAt;

    public FeedbackBench()
    {
        Watch = new FeedbackWatch(Told);
        Run(100);
    }

    /// <summary>A tool of a swing runs, and the vacuum with it.</summary>
    public static FeedbackBench Running(int tool, int vacuum)
    {
        FeedbackBench bench = new FeedbackBench();
        bench.Tool = tool;
        bench.Vacuum = vacuum;
        bench.Wants = true;
        return bench;
    }

    /// <summary>The same in a box that has seen a run-on without a tool.</summary>
    public static FeedbackBench Proven(int tool, int vacuum)
    {
        FeedbackBench bench = Running(tool, 0);
        bench.Run(5000);
        bench.Tool = 0;
        bench.Run(5000);
        bench.Wants = false;
        bench.Run(2000);
        bench.Tool = tool;
        bench.Vacuum = vacuum;
        bench.Run(100);
        bench.Wants = true;
        return bench;
    }

    public void MakeTwin()
    {
        StateTape tape = new StateTape();
        tape.Write();
        Watch.Exchange(tape);
        tape.Read();
        Twin = new FeedbackWatch(new NoticeQueue());
        Twin.Exchange(tape);
    }

    public void Run(int milliseconds)
    {
        for (long until = Now + (milliseconds * 1000L); Now < until;)
        {
            Step(Readings);
        }
    }

    /// <summary>So many buckets come without a reading.</summary>
    public void Silence(int buckets)
    {
        for (int i = 0; i < buckets; i++)
        {
            Step(0);
        }
    }

    /// <summary>Time passes until the next look begins, or is over, but no more than so many ms.</summary>
    /// <returns>How many ms it took; -1 where it did not come.</returns>
    public int MillisecondsToLook(bool begins, int most)
    {
        long from = Now;
        while (Now - from < most * 1000L)
        {
            Step(Readings);
            if (Watch.IsProbing == begins)
            {
                return (int)((Now - from) / 1000);
            }
        }

        return -1;
    }

    private void Step(int readings)
    {
        Now += Bucket.Microseconds;
        UpdateFeed();
        int vacuum = !_isFed ? 0 : Now - _fedAt < SurgeMicroseconds ? Vacuum * Surge : Vacuum;
        double turn = Now % 20000 / 20000.0;

        // The swing of a sine is twice its peak.
        double counts = ((Tool * Sine.Of(turn)) + (vacuum * Sine.Of((turn + (VacuumAngle / 8.0)) % 1))) / 32;
        _window.Add((int)((1600 + counts) * readings), readings);
        UpdateRelay();
        if (Calls(Watch) && Watch.Accept(_window, Now))
        {
            IsProved = true;
        }

        if (Twin != null)
        {
            bool isProved = Calls(Twin) && Twin.Accept(_window, Now);
            Differs = Differs || (isProved && !IsProved)
                || Twin.IsProbing != Watch.IsProbing || Twin.IsWatching != Watch.IsWatching;
        }

        if (Watch.IsProbing && !_wasProbing)
        {
            Looks++;
            LookedAt = Now;
        }

        _wasProbing = Watch.IsProbing;
    }

    private bool Calls(FeedbackWatch watch)
    {
        return watch.IsWatching && ((_window.Place & 7) == 0 || watch.WantsEveryBucket);
    }

    private void UpdateRelay()
    {
        bool closed = Wants && !Watch.IsProbing && !IsProved && (_isClosed || Now - _changed >= RestMicroseconds);
        if (closed != _isClosed)
        {
            _isClosed = closed;
            _changed = Now;
            Tell(Watch);
            if (Twin != null)
            {
                Tell(Twin);
            }
        }
    }

    private void UpdateFeed()
    {
        bool wasFed = _isFed;
        _isFed = Now - _changed < (_isClosed ? CloseMicroseconds : OpenMicroseconds) ? !_isClosed : _isClosed;
        _fedAt = _isFed && !wasFed ? Now : _fedAt;
    }

    private void Tell(FeedbackWatch watch)
    {
        if (_isClosed)
        {
            watch.NoteClosing(_window, Least, Now);
        }
        else
        {
            watch.NoteOpening(_window.Swing >= Least, Now);
        }
    }
}
