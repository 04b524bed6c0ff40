namespace NanoDustSwitch.Detection;

/// <summary>Peak-to-peak of running quarter-cycle means over about one cycle, with an answer at every bucket.</summary>
/// <remarks>
/// A mean of two buckets lasts 5 ms, a quarter of a 50 Hz cycle: long enough to average the noise, short enough to keep
/// 86 to 90 % of the swing. A peak-to-peak needs no midpoint, so nothing that drifts is on the way to the decision.
/// </remarks>
public sealed class SwingWindow
{
    /// <summary>Means in the window; at 2.5 ms each they cover a cycle of 50 Hz and a little more than one of 60 Hz.</summary>
    public const int Length = 8;

    private readonly int[] _means = new int[Length];
    private int _next;
    private int _filled = -1;
    private int _lastSum;
    private int _lastCount;
    private int _least;
    private int _greatest;
    private int _leastAt;
    private int _greatestAt;

    /// <summary>Swing in sixteenths of a count, 0 or more; holds its last value while the window is void.</summary>
    public int Swing;

    /// <summary>Latest quarter-cycle mean in sixteenths of a count.</summary>
    public int Mean;

    /// <summary>Whether the window is full of means without a gap among them.</summary>
    public bool IsValid;

    /// <summary>Takes the next bucket.</summary>
    /// <param name="sum">Sum of the readings in counts.</param>
    /// <param name="count">Number of readings. One bucket without any is bridged by its neighbours; two void the window.</param>
    public void Add(int sum, int count)
    {
        int readings = _lastCount + count;
        int total = _lastSum + sum;
        _lastSum = sum;
        _lastCount = count;
        if (readings == 0)
        {
            Void();
            return;
        }

        int filled = _filled;
        if (filled < 0)
        {
            // The first bucket after a gap has no other to make a quarter cycle with.
            _filled = 0;
            return;
        }

        int mean = total * SensorScale.PartsACount / readings;
        Mean = mean;
        int[] means = _means;
        int next = _next;
        means[next] = mean;
        _next = next + 1 == Length ? 0 : next + 1;
        if (filled < Length)
        {
            _filled = filled + 1;
            if (filled + 1 < Length)
            {
                return;
            }

            IsValid = true;
            FindLeast(next);
            FindGreatest(next);
        }
        else
        {
            // Only when an end of the swing leaves the window do the others have to be looked at.
            if (mean <= _least)
            {
                _least = mean;
                _leastAt = next;
            }
            else if (next == _leastAt)
            {
                FindLeast(next);
            }

            if (mean >= _greatest)
            {
                _greatest = mean;
                _greatestAt = next;
            }
            else if (next == _greatestAt)
            {
                FindGreatest(next);
            }
        }

        Swing = _greatest - _least;
    }

    /// <summary>Forgets what the window holds: what came before a gap says nothing about what comes after it.</summary>
    public void Void()
    {
        _filled = -1;
        _next = 0;
        _lastSum = 0;
        _lastCount = 0;
        IsValid = false;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_means);
        _next = tape.Number(_next);
        _filled = tape.Number(_filled);
        _lastSum = tape.Number(_lastSum);
        _lastCount = tape.Number(_lastCount);
        _least = tape.Number(_least);
        _greatest = tape.Number(_greatest);
        _leastAt = tape.Number(_leastAt);
        _greatestAt = tape.Number(_greatestAt);
        Swing = tape.Number(Swing);
        Mean = tape.Number(Mean);
        IsValid = tape.Flag(IsValid);
    }

    private void FindLeast(int at)
    {
        int[] means = _means;
        int least = means[at];
        for (int i = Length - 1; i >= 0; i--)
        {
            if (means[i] < least)
            {
                least = means[i];
                at = i;
            }
        }

        _least = least;
        _leastAt = at;
    }

    private void FindGreatest(int at)
    {
        int[] means = _means;
        int greatest = means[at];
        for (int i = Length - 1; i >= 0; i--)
        {
            if (means[i] > greatest)
            {
                greatest = means[i];
                at = i;
            }
        }

        _greatest = greatest;
        _greatestAt = at;
    }
}
