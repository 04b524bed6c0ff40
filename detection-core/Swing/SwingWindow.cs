namespace NanoDustSwitch.Detection;

/// <summary>
/// The strength of the mains in the last cycle and in the last two, with an answer at every bucket: power at 50 Hz in eight bucket means, by a
/// quadrature pair, and half of that at its third harmonic.
/// </summary>
/// <remarks>
/// The weights repeat every eight buckets and add up to nought: what rests drops out, and needs no midpoint. Eight buckets are so short that the
/// pair hears 45 to 65 Hz. The third harmonic is what narrow pulses have most of. What was measured is told as a swing: that of the sine behind it,
/// from peak to peak. Detection in white noise by a quadrature pair: Kay, Detection Theory (from memory).
/// </remarks>
public sealed class SwingWindow
{
    /// <summary>Bucket means in the window: a cycle of 50 Hz, and a little more than one of 60 Hz.</summary>
    public const int Length = 8;

    private const int Half = Length / 2;

    // The root of a half in parts of 2^8.
    private const int RootOfHalf = 181;
    private const int RootShift = 8;

    private readonly int[] _means = new int[Length];
    private readonly long[] _powers = new long[Length];

    // At a place of the half cycle: the means of one half less those of the other. That leaves the odd harmonics.
    private readonly int[] _differences = new int[Half];
    private long _energy;
    private int _next;
    private int _filled;
    private int _last;
    private bool _isBridged;
    private int _swing;

    /// <summary>Power in the last cycle, 0 or more, in squared sixteenths of a count, as <see cref="PowerOf"/>; holds its last value while the window is void.</summary>
    public long Power;

    /// <summary>Power in the last cycle and in the one before it, added; 0 until there are two.</summary>
    public long PowerOfTwo;

    /// <summary>Mean of the last two buckets, a quarter of a 50 Hz cycle, in sixteenths of a count.</summary>
    public int QuarterMean;

    /// <summary>Whether the window is full of means without a gap among them.</summary>
    public bool IsValid;

    /// <summary>Gets the swing in the last cycle, in sixteenths of a count; holds its last value while the window is void.</summary>
    public int Swing
    {
        get
        {
            // The guess is not part of the state: any gives the same.
            _swing = SwingOf(Power, _swing);
            return _swing;
        }
    }

    /// <summary>The power of a sine: a pair over eight means gives four times its amplitude.</summary>
    /// <param name="swing">Its swing, twice its amplitude, in sixteenths of a count.</param>
    /// <returns>Power in squared sixteenths of a count.</returns>
    public static long PowerOf(int swing)
    {
        return 4L * swing * swing;
    }

    /// <summary>The swing of the sine behind a power.</summary>
    /// <param name="power">Power in squared sixteenths of a count.</param>
    /// <param name="guess">A swing that may be near; any gives the same.</param>
    /// <returns>Swing in sixteenths of a count.</returns>
    public static int SwingOf(long power, int guess)
    {
        return IntegerMath.SquareRoot(power, 2 * guess) / 2;
    }

    /// <summary>Takes the next bucket.</summary>
    /// <param name="sum">Sum of the readings in counts.</param>
    /// <param name="count">Number of readings. One bucket without any is bridged by the one before it; two void the window.</param>
    public void Add(int sum, int count)
    {
        int mean;
        if (count > 0)
        {
            mean = sum * SensorScale.PartsACount / count;
            _isBridged = false;
        }
        else if (_isBridged || _filled == 0)
        {
            Void();
            return;
        }
        else
        {
            mean = _last;
            _isBridged = true;
        }

        QuarterMean = (_last + mean) >> 1;
        _last = mean;

        int[] differences = _differences;
        int next = _next;
        int place = next & (Half - 1);
        int before = differences[place];
        int change = mean - _means[next];
        _means[next] = mean;
        int after = next < Half ? before + change : before - change;
        differences[place] = after;
        _energy += ((long)after * after) - ((long)before * before);

        // |X1|² + |X3|² / 2 of a transform of eight, worked out from the differences d: 3/2 of their squares, d0 times
        // (d1 - d3) / √2, and d2 times (d1 + d3) / √2.
        int second = differences[1];
        int fourth = differences[3];
        long power = _energy + (_energy >> 1)
            + ((long)differences[0] * (((second - fourth) * RootOfHalf) >> RootShift))
            + ((long)differences[2] * (((second + fourth) * RootOfHalf) >> RootShift));
        long aCycleAgo = _powers[next];
        _powers[next] = power;
        _next = (next + 1) & (Length - 1);
        if (_filled < 2 * Length)
        {
            _filled++;
            if (_filled < Length)
            {
                return;
            }

            IsValid = true;
            if (_filled < 2 * Length)
            {
                aCycleAgo = -power;
            }
        }

        Power = power;
        PowerOfTwo = power + aCycleAgo;
    }

    /// <summary>Looks at single means: a large tool shows its swing in them before its power has come together.</summary>
    /// <returns>From the least to the greatest, in sixteenths of a count: 0.90 to 0.97 of a sine's swing.</returns>
    public int PeakToPeak()
    {
        int[] means = _means;
        int least = means[0];
        int greatest = least;
        for (int i = Length - 1; i > 0; i--)
        {
            int mean = means[i];
            if (mean < least)
            {
                least = mean;
            }
            else if (mean > greatest)
            {
                greatest = mean;
            }
        }

        return greatest - least;
    }

    /// <summary>Forgets what the window holds: what came before a gap says nothing about what comes after it.</summary>
    public void Void()
    {
        _filled = 0;
        _isBridged = false;
        IsValid = false;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_means);
        tape.Numbers(_powers);
        tape.Numbers(_differences);
        _energy = tape.Number(_energy);
        _next = tape.Number(_next);
        _filled = tape.Number(_filled);
        _last = tape.Number(_last);
        _isBridged = tape.Flag(_isBridged);
        Power = tape.Number(Power);
        PowerOfTwo = tape.Number(PowerOfTwo);
        QuarterMean = tape.Number(QuarterMean);
        IsValid = tape.Flag(IsValid);
    }
}
