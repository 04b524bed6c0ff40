namespace NanoDustSwitch.Detection;

/// <summary>
/// Finds tools that are too small to stand out of the noise of one cycle: measures the strength of 50 and of 60 Hz over the
/// last 0.4 s, which are 20 and 24 cycles.
/// </summary>
/// <remarks>
/// The strength of a single frequency comes from Goertzel's recursion (1958; any textbook of signal processing) over
/// quarter-cycle means that do not overlap, in blocks of 100 ms. A block holds whole cycles of either frequency, so the resting
/// point adds nothing to it. The powers of four blocks are summed, which ignores the phase from block to block, so the mains
/// may be 2 Hz off. The stronger of the two frequencies counts.
/// </remarks>
public sealed class SlowLane
{
    /// <summary>How many blocks make an answer.</summary>
    public const int Blocks = 4;

    // Quarter-cycle means, of 5 ms each, in a block.
    private const int MeansABlock = 20;

    // Goertzel's coefficient 2·cos(2π · 60 Hz · 5 ms), times 2^14. That of 50 Hz is 0, so its recursion needs no multiplication.
    private const int Coefficient60 = -10126;
    private const int CoefficientShift = 14;

    // From the root of the summed powers of four blocks to the swing of the sine behind it, times 2^16. The root is twice that of
    // one block, and the amplitude of the means is 2/20 of a block's root (textbook: discrete Fourier transform of 20 values).
    // Of a sine's amplitude quarter-cycle means keep sin(x)/x with x = π · frequency · 5 ms: 0.900 at 50 Hz and 0.858 at 60 Hz.
    // A swing is counted as 2 · 0.974 times the amplitude (SensorScale). So this is 2^16 · 1/2 · 2/20 · 2 · 0.974 / 0.900.
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

    /// <summary>
    /// Swing of the sine that was found, in sixteenths of a count as <see cref="SwingWindow"/> would give it; meaningless until
    /// the first answer.
    /// </summary>
    public int Swing;

    /// <summary>How many answers there have been; it is there to see that a new one has come.</summary>
    public int Answers;

    /// <summary>Takes the next quarter-cycle mean: every second one of the window, so that they do not overlap.</summary>
    /// <remarks>
    /// From 0.4 s on there is a new answer ten times a second. It is worked out with the first mean after a block and not with
    /// its last one, which spreads the work over two buckets.
    /// </remarks>
    /// <param name="mean">Mean in sixteenths of a count.</param>
    /// <returns>True when there is a new answer.</returns>
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
        if (++_count == MeansABlock)
        {
            _count = 0;
            EndBlock();
        }

        return isAnswered;
    }

    /// <summary>Starts afresh, after a gap or after a tool that the fast lane saw: the next answer comes 0.4 s later.</summary>
    public void Reset()
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
