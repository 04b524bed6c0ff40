namespace NanoDustSwitch.Detection;

/// <summary>
/// Finds what one cycle cannot tell from the noise: the strength of 50 and of 60 Hz over the last 0.4 s, which are 20 and 24
/// cycles.
/// </summary>
/// <remarks>
/// Goertzel's recursion (1958; any textbook of signal processing) over quarter-cycle means that do not overlap, in blocks of 100 ms:
/// whole cycles of both frequencies, so that the resting point drops out. The powers of four blocks are summed without regard to phase,
/// so that the mains may be 2 Hz off. The stronger of the two counts.
/// </remarks>
public sealed class SlowLane
{
    /// <summary>Blocks in an answer.</summary>
    public const int Blocks = 4;

    private const int Means = 20;

    // 2·cos(2π · 60 Hz · 5 ms) in parts of 2^14; for 50 Hz it is nought.
    private const int Coefficient60 = -10126;
    private const int CoefficientShift = 14;

    // From the root of the summed powers to the swing of the sine behind it, in parts of 2^16: an amplitude is 2/20 of a block's root,
    // quarter-cycle means keep 0.900 of it at 50 Hz and 0.858 at 60 Hz, and the swing of its sine is counted as 2 · 0.974 of it (SensorScale).
    private const long SwingOf50 = 7092;
    private const long SwingOf60 = 7440;
    private const int SwingShift = 16;

    private readonly long[] _powers50 = new long[Blocks];
    private readonly long[] _powers60 = new long[Blocks];
    private long _sum50;
    private long _sum60;
    private int _block;
    private int _filled;
    private int _count;
    private int _reference;
    private int _last50;
    private int _before50;
    private int _last60;
    private int _before60;

    /// <summary>Swing of the sine that was found, in sixteenths of a count as <see cref="SwingWindow"/> would give it; meaningless until an answer.</summary>
    public int Swing;

    /// <summary>Answers so far; only their change says anything.</summary>
    public int Answers;

    /// <summary>Takes the next quarter-cycle mean; every second of the window's, which overlap.</summary>
    /// <param name="mean">Mean in sixteenths of a count.</param>
    /// <returns>True when there is a new answer, ten times a second once 0.4 s have come together: with the first mean after them, to spread the work.</returns>
    public bool Add(int mean)
    {
        bool isAnswered = false;
        if (_count == 0)
        {
            isAnswered = _filled == Blocks;
            Begin(mean);
        }

        mean -= _reference;
        int next = mean - _before50;
        _before50 = _last50;
        _last50 = next;
        int last = _last60;
        next = mean + (int)(((long)Coefficient60 * last) >> CoefficientShift) - _before60;
        _before60 = last;
        _last60 = next;
        if (++_count == Means)
        {
            _count = 0;
            EndBlock();
        }

        return isAnswered;
    }

    /// <summary>Forgets everything: after a gap, or a tool that the fast lane saw.</summary>
    public void Void()
    {
        _count = 0;
        _filled = 0;
        _sum50 = 0;
        _sum60 = 0;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_powers50);
        tape.Numbers(_powers60);
        _sum50 = tape.Number(_sum50);
        _sum60 = tape.Number(_sum60);
        _block = tape.Number(_block);
        _filled = tape.Number(_filled);
        _count = tape.Number(_count);
        _reference = tape.Number(_reference);
        _last50 = tape.Number(_last50);
        _before50 = tape.Number(_before50);
        _last60 = tape.Number(_last60);
        _before60 = tape.Number(_before60);
        Swing = tape.Number(Swing);
        Answers = tape.Number(Answers);
    }

    private void Begin(int mean)
    {
        if (_filled == Blocks)
        {
            Answer();
        }

        _reference = mean;
        _last50 = 0;
        _before50 = 0;
        _last60 = 0;
        _before60 = 0;
    }

    private void EndBlock()
    {
        int block = _block;
        if (_filled == Blocks)
        {
            _sum50 -= _powers50[block];
            _sum60 -= _powers60[block];
        }
        else
        {
            _filled++;
        }

        long last = _last50;
        long before = _before50;
        long power = (last * last) + (before * before);
        _powers50[block] = power;
        _sum50 += power;
        last = _last60;
        before = _before60;
        power = (last * last) + (before * before) - ((Coefficient60 * last >> CoefficientShift) * before);
        _powers60[block] = power;
        _sum60 += power;
        _block = block + 1 == Blocks ? 0 : block + 1;
    }

    private void Answer()
    {
        Answers++;
        bool is60 = _sum60 > _sum50;
        long root = IntegerMath.SquareRoot(is60 ? _sum60 : _sum50, Swing * 10);
        Swing = (int)((root * (is60 ? SwingOf60 : SwingOf50)) >> SwingShift);
    }
}
