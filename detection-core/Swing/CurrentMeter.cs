namespace NanoDustSwitch.Detection;

/// <summary>Mean and rms of the bucket means over 200 ms, which are ten whole cycles of 50 Hz and twelve of 60 Hz.</summary>
/// <remarks>
/// The result is shown and judged for faults; the decision whether a tool runs does not wait for it. 200 ms is the usual
/// measuring window of power quality instruments (IEC 61000-4-30; from memory).
/// </remarks>
public sealed class CurrentMeter
{
    /// <summary>Buckets in a measuring window.</summary>
    public const int Length = 80;

    private int _buckets;
    private int _sum;
    private long _squares;

    /// <summary>Mean over the last whole window, in sixteenths of a count.</summary>
    public int Mean;

    /// <summary>Rms about the mean over the last whole window, in sixteenths of a count.</summary>
    public int Rms;

    /// <summary>Takes eight means, to be called once in eight buckets.</summary>
    /// <param name="window">A full window, of which the half is taken that was filled last.</param>
    /// <returns>True when a window ended and <see cref="Mean"/> and <see cref="Rms"/> are new.</returns>
    public bool Add(SwingWindow window)
    {
        // Eight squares of means fit into 32 bits. Four in a round, to spare the board rounds.
        int[] means = window.Means;
        int sum = 0;
        int squares = 0;
        int place = (window.Place ^ SwingWindow.Length) & SwingWindow.Length;
        for (int end = place + SwingWindow.Length; place < end; place += 4)
        {
            int first = means[place];
            int second = means[place + 1];
            int third = means[place + 2];
            int fourth = means[place + 3];
            sum += first + second + third + fourth;
            squares += (first * first) + (second * second) + (third * third) + (fourth * fourth);
        }

        sum += _sum;
        _sum = sum;
        _squares += squares;
        _buckets += SwingWindow.Length;
        if (_buckets < Length)
        {
            return false;
        }

        Mean = (int)((long)sum * SwingWindow.SixteenthsAQuarter / Length);
        long aboutTheMean = _squares - ((long)sum * sum / Length);
        Rms = IntegerMath.SquareRoot(aboutTheMean * SwingWindow.SquareOfQuarters / Length, Rms);
        Reset();
        return true;
    }

    /// <summary>Starts afresh after a gap: the half-filled window is dropped, the last result stays.</summary>
    public void Reset()
    {
        _buckets = 0;
        _sum = 0;
        _squares = 0;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _buckets = tape.Number(_buckets);
        _sum = tape.Number(_sum);
        _squares = tape.Number(_squares);
        Mean = tape.Number(Mean);
        Rms = tape.Number(Rms);
    }
}
