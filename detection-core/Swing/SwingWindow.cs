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

    // The root of a half in parts of 2^8.
    private const int RootOfHalf = 181;
    private const int RootShift = 8;

    // The means are in quarters of a count, so that a power fits into 32 bits: the greatest is 7.42 times the square of the greatest difference.
    private const int Quarters = 4;
    private const int SixteenthsShift = 2;
    private const long SquareOfQuarters = 16;

    private const int Kept = 2 * Length;

    private readonly int[] _means = new int[Kept];
    private readonly int[] _powers = new int[Kept];
    private int _filled;
    private bool _isBridged;
    private int _swing;
    private int _fundamental;

    // The last mean less the one half a window before it, and the same of the three buckets before. That leaves the odd harmonics.
    private int _first;
    private int _second;
    private int _third;
    private int _squares;

    /// <summary>Power in the last cycle, 0 or more, in squared quarters of a count, as <see cref="PowerOf"/>; holds its last value while the window is void.</summary>
    public int Power;

    /// <summary>Place of the next bucket in a row of sixteen, 0 to 15.</summary>
    public int Place;

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

    /// <summary>Gets the swing of the mains frequency alone, in sixteenths of a count: of narrow pulses it hardly depends on where they fall in the buckets.</summary>
    public int Fundamental
    {
        get
        {
            // |X1|² + |X3|² is twice the squares.
            _fundamental = SwingOf(2 * (Power - _squares), _fundamental);
            return _fundamental;
        }
    }

    /// <summary>The power of a sine: a pair over eight means gives four times its amplitude.</summary>
    /// <param name="swing">Its swing, twice its amplitude, in sixteenths of a count.</param>
    /// <returns>Power in squared quarters of a count; the greatest number where it is more.</returns>
    public static int PowerOf(int swing)
    {
        long power = 4L * swing * swing / SquareOfQuarters;
        return power < int.MaxValue ? (int)power : int.MaxValue;
    }

    /// <summary>The swing of the sine behind a power.</summary>
    /// <param name="power">Power in squared quarters of a count.</param>
    /// <param name="guess">A swing that may be near; any gives the same.</param>
    /// <returns>Swing in sixteenths of a count.</returns>
    public static int SwingOf(int power, int guess)
    {
        return IntegerMath.SquareRoot(power * SquareOfQuarters / 4, guess);
    }

    /// <summary>Takes the next bucket.</summary>
    /// <param name="sum">Sum of the readings in counts.</param>
    /// <param name="count">Number of readings. One bucket without any is bridged by the one before it; two void the window.</param>
    public void Add(int sum, int count)
    {
        int[] means = _means;
        int next = Place;
        int mean;
        if (count > 0)
        {
            mean = sum * Quarters / count;
            _isBridged = false;
        }
        else if (_isBridged || _filled == 0)
        {
            Void();
            return;
        }
        else
        {
            mean = means[(next - 1) & (Kept - 1)];
            _isBridged = true;
        }

        // The transform of the last eight means x at 1 and 3 cycles in them, from d = x less the x four before it:
        // |X1|² + |X3|² / 2 = 3/2 of the squares of the d, and d0 · (d1 - d3) / √2, and d2 · (d1 + d3) / √2.
        int fourth = _third;
        int third = _second;
        int second = _first;
        int first = mean - means[(next - (Length / 2)) & (Kept - 1)];
        _third = third;
        _second = second;
        _first = first;
        means[next] = mean;
        int squares = (first * first) + (second * second) + (third * third) + (fourth * fourth);
        int power = squares + (squares >> 1)
            + (first * (((second - fourth) * RootOfHalf) >> RootShift))
            + (third * (((second + fourth) * RootOfHalf) >> RootShift));
        _powers[next] = power;
        Place = (next + 1) & (Kept - 1);
        Power = power;
        _squares = squares;
        if (_filled < Kept)
        {
            _filled++;
            IsValid = _filled >= Length;
        }
    }

    /// <summary>Adds the power of the last cycle and that of the one before it.</summary>
    /// <returns>Half of the sum, so in the units of <see cref="Power"/>; 0 until there are two.</returns>
    public int MeanPowerOfTwo()
    {
        return _filled < Kept ? 0 : (Power >> 1) + (_powers[(Place - 1 - Length) & (Kept - 1)] >> 1);
    }

    /// <summary>Takes the mean of the last two buckets, a quarter of a 50 Hz cycle.</summary>
    /// <returns>Mean in sixteenths of a count, from a valid window.</returns>
    public int QuarterMean()
    {
        int[] means = _means;
        int next = Place;
        return (means[(next - 1) & (Kept - 1)] + means[(next - 2) & (Kept - 1)]) << (SixteenthsShift - 1);
    }

    /// <summary>Looks for the greatest power of the last eight answers: where it ripples, that is what meets a level.</summary>
    /// <returns>Power as <see cref="Power"/>.</returns>
    public int GreatestPower()
    {
        int greatest = Power;
        if (_filled == Kept)
        {
            for (int i = 2; i <= Length; i++)
            {
                int power = _powers[(Place - i) & (Kept - 1)];
                greatest = power > greatest ? power : greatest;
            }
        }

        return greatest;
    }

    /// <summary>Looks at single means: a large tool shows its swing in them before its power has come together.</summary>
    /// <returns>From the least to the greatest, in sixteenths of a count: 0.90 to 0.97 of a sine's swing.</returns>
    public int PeakToPeak()
    {
        int[] means = _means;
        int last = Place - 1;
        int least = means[last & (Kept - 1)];
        int greatest = least;
        for (int i = 1; i < Length; i++)
        {
            int mean = means[(last - i) & (Kept - 1)];
            if (mean < least)
            {
                least = mean;
            }
            else if (mean > greatest)
            {
                greatest = mean;
            }
        }

        return (greatest - least) << SixteenthsShift;
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
        Place = tape.Number(Place);
        _filled = tape.Number(_filled);
        _isBridged = tape.Flag(_isBridged);
        _first = tape.Number(_first);
        _second = tape.Number(_second);
        _third = tape.Number(_third);
        _squares = tape.Number(_squares);
        Power = tape.Number(Power);
        IsValid = tape.Flag(IsValid);
    }
}
