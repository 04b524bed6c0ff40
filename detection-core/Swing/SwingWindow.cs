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
    private int _filled;
    private int _lastSum;
    private int _lastCount;
    private bool _hasLast;
    private int _least;
    private int _greatest;

    /// <summary>Swing in sixteenths of a count, 0 or more; holds its last value while the window is void.</summary>
    public int Swing;

    /// <summary>Whether the window is full of means without a gap among them.</summary>
    public bool IsValid;

    /// <summary>Takes the next bucket.</summary>
    /// <param name="sum">Sum of the readings in counts.</param>
    /// <param name="count">Number of readings. One bucket without any is bridged by its neighbours; two void the window.</param>
    public void Add(int sum, int count)
    {
        int readings = _lastCount + count;
        int total = _lastSum + sum;
        bool hadLast = _hasLast;
        _lastSum = sum;
        _lastCount = count;
        _hasLast = true;
        if (!hadLast)
        {
            return;
        }

        if (readings == 0)
        {
            Void();
            return;
        }

        int mean = total * SensorScale.PartsACount / readings;
        int[] means = _means;
        int next = _next;
        int leaving = means[next];
        means[next] = mean;
        next++;
        _next = next == Length ? 0 : next;
        if (_filled < Length)
        {
            _filled++;
            if (_filled < Length)
            {
                return;
            }

            IsValid = true;
            LookThrough(mean);
        }
        else if (leaving == _least || leaving == _greatest)
        {
            LookThrough(mean);
        }
        else if (mean < _least)
        {
            // As long as neither end of the swing leaves the window, the new mean alone decides.
            _least = mean;
        }
        else if (mean > _greatest)
        {
            _greatest = mean;
        }

        Swing = _greatest - _least;
    }

    /// <summary>Forgets what the window holds: what came before a gap says nothing about what comes after it.</summary>
    public void Void()
    {
        _filled = 0;
        _next = 0;
        _hasLast = false;
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
        _hasLast = tape.Flag(_hasLast);
        _least = tape.Number(_least);
        _greatest = tape.Number(_greatest);
        Swing = tape.Number(Swing);
        IsValid = tape.Flag(IsValid);
    }

    private void LookThrough(int mean)
    {
        int[] means = _means;
        int least = mean;
        int greatest = mean;
        for (int i = 0; i < Length; i++)
        {
            int one = means[i];
            if (one < least)
            {
                least = one;
            }
            else if (one > greatest)
            {
                greatest = one;
            }
        }

        _least = least;
        _greatest = greatest;
    }
}
