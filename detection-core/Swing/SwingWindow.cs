namespace NanoDustSwitch.Detection;

/// <summary>
/// The strength of the mains in the last cycle and in the last two, with a new answer at every bucket: the power of 50 Hz in
/// eight bucket means, measured by a quadrature pair, and half of the power of its third harmonic.
/// </summary>
/// <remarks>
/// A quadrature pair compares the means with a sine and with a cosine and adds the squares, so the answer does not depend on
/// the phase. It is the usual detector for a sine of unknown phase in white noise (Kay, Detection Theory; from memory). Its
/// weights repeat every eight buckets and add up to zero, so a constant level adds nothing and the resting point need not be
/// known. Eight buckets are so few that the pair also answers to 45 and to 65 Hz. The third harmonic is added for narrow
/// pulses, which have most of their strength there. What is measured is told as a swing: the peak-to-peak of the sine that has
/// the same power.
/// </remarks>
public sealed class SwingWindow
{
    /// <summary>Bucket means in the window: a cycle of 50 Hz, and a little more than one of 60 Hz.</summary>
    public const int Length = 8;

    // The square root of one half, times 2^8.
    private const int RootOfHalf = 181;
    private const int RootShift = 8;

    // The window keeps its means in quarters of a count. With finer parts a power would not fit into 32 bits: the greatest
    // possible power is 7.42 times the square of the greatest difference between two means.
    private const int Quarters = 4;
    private const int SixteenthsShift = 2;
    internal const int SixteenthsAQuarter = 4;
    internal const long SquareOfQuarters = 16;

    private const int LengthShift = 3;
    private const int KeptShift = 4;

    // The square of the parts in which ThirdHarmonic is told.
    private const int ThirdParts = 1 << 20;
    private const int Kept = 2 * Length;
    internal const int Mask = Kept - 1;
    private const int RippleLag = 5;

    private int _filled;
    private bool _isBridged;
    private int _swing;

    // The last mean less the one four buckets before it, and the same for the three buckets before the last. Such a difference
    // over half a cycle doubles the odd harmonics and cancels the even ones and the resting point.
    private int _first;
    private int _second;
    private int _third;

    // Where the last mean is that a single reading has made; negative where there is none.
    private int _wildPlace = -1;

    /// <summary>The last sixteen means in quarters of a count, each at the <see cref="Place"/> of its bucket.</summary>
    public readonly int[] Means = new int[Kept];

    /// <summary>The last sixteen powers, in the unit of <see cref="Power"/>.</summary>
    public readonly int[] Powers = new int[Kept];

    /// <summary>
    /// Half of the power of the mains frequency alone, for each of the last sixteen buckets, in the unit of <see cref="Power"/>.
    /// For narrow pulses that hardly depends on where they fall within the buckets, as the third harmonic does.
    /// </summary>
    public readonly int[] Halves = new int[Kept];

    /// <summary>
    /// Power in the last cycle, 0 or more, in squared quarters of a count, as <see cref="PowerOf"/> gives it. It keeps its last
    /// value while the window is not valid.
    /// </summary>
    public int Power;

    /// <summary>Least mean of the last eight when <see cref="SumAndExtremes"/> looked, in sixteenths of a count.</summary>
    public int Least;

    /// <summary>Greatest of them.</summary>
    public int Greatest;

    /// <summary>Where the next bucket's mean goes, 0 to 15; goes up by one with every bucket and begins anew after 15.</summary>
    public int Place;

    /// <summary>Whether the last eight buckets are known, with no more than single ones missing among them.</summary>
    public bool IsValid;

    /// <summary>Whether all sixteen means are known.</summary>
    public bool IsFull;

    /// <summary>
    /// Gets the swing in the last cycle, in sixteenths of a count; it keeps its last value while the window is not valid.
    /// </summary>
    public int Swing
    {
        get
        {
            // The last swing is only the first guess at the next root. Any guess gives the same root, so it is no part of the
            // state.
            _swing = SwingOf(Power, _swing);
            return _swing;
        }
    }

    /// <summary>
    /// Tells the power of a sine. A quadrature pair over eight means gives four times the amplitude (textbook: N/2 times for a
    /// discrete Fourier transform of N values), and a swing is twice the amplitude: the power is 4 times the square of the
    /// swing.
    /// </summary>
    /// <param name="swing">Its swing in sixteenths of a count.</param>
    /// <returns>Power in squared quarters of a count; the greatest possible number where it is more.</returns>
    public static int PowerOf(int swing)
    {
        long power = 4L * swing * swing / SquareOfQuarters;
        return power < int.MaxValue ? (int)power : int.MaxValue;
    }

    /// <summary>Tells the swing of the sine that has a power.</summary>
    /// <param name="power">Power in squared quarters of a count.</param>
    /// <param name="guess">
    /// A first guess, for example the last swing: a near one is quicker, and any gives the same result.
    /// </param>
    /// <returns>Swing in sixteenths of a count.</returns>
    public static int SwingOf(int power, int guess)
    {
        return IntegerMath.SquareRoot(power * SquareOfQuarters / 4, guess);
    }

    /// <summary>Takes the next bucket.</summary>
    /// <param name="sum">Sum of the readings in counts.</param>
    /// <param name="count">
    /// Number of readings. A single bucket without readings is taken to be like the one before it; a second one in a row starts
    /// the window afresh.
    /// </param>
    public void Add(int sum, int count)
    {
        int[] means = Means;
        int next = Place;
        int mean;
        if (count > 0)
        {
            mean = sum * Quarters / count;
            _isBridged = false;
        }
        else if (_isBridged || _filled == 0)
        {
            Reset();
            return;
        }
        else
        {
            mean = means[(next - 1) & Mask];
            _isBridged = true;
        }

        // X1 and X3 are the discrete Fourier transform of the last eight means, at one and at three cycles in them (textbook).
        // With d0 to d3 for the last four differences, the latest first, the power is
        // |X1|² + |X3|² / 2 = 3/2 · (d0² + d1² + d2² + d3²) + d0 · (d1 - d3) / √2 + d2 · (d1 + d3) / √2.
        // (|X1|² + |X3|²) / 2 is d0² + d1² + d2² + d3², so that |X1|² / 2 is what the power has beyond that.
        int fourth = _third;
        int third = _second;
        int second = _first;
        int first = mean - means[(next - (Length / 2)) & Mask];
        _third = third;
        _second = second;
        _first = first;
        means[next] = mean;
        int squares = (first * first) + (second * second) + (third * third) + (fourth * fourth);
        int half = (squares >> 1)
            + (first * (((second - fourth) * RootOfHalf) >> RootShift))
            + (third * (((second + fourth) * RootOfHalf) >> RootShift));
        Halves[next] = half;
        squares += half;
        Powers[next] = squares;
        Power = squares;
        Place = (next + 1) & Mask;
        if (!IsFull)
        {
            _filled++;
            IsFull = _filled == Kept;
            if (!IsValid && _filled >= Length)
            {
                IsValid = true;
                ForgetPowers();
            }
        }
    }

    /// <summary>
    /// Takes the first half of a long bucket, without working out a power: <see cref="Add"/> does that for the second half, which
    /// has the same mean.
    /// </summary>
    /// <param name="sum">Sum of the bucket's readings in counts.</param>
    /// <param name="count">Number of them, 1 or more.</param>
    public void AddFirstHalf(int sum, int count)
    {
        int next = Place;
        int mean = sum * Quarters / count;
        _third = _second;
        _second = _first;
        _first = mean - Means[(next - (Length / 2)) & Mask];
        Means[next] = mean;
        Powers[next] = Power;
        Halves[next] = Halves[(next - 1) & Mask];
        Place = (next + 1) & Mask;
        if (_filled < Kept)
        {
            _filled++;
            IsFull = _filled == Kept;
        }
    }

    /// <summary>Takes the mean power of the last cycle and the one before it.</summary>
    /// <returns>The mean in the unit of <see cref="Power"/>; 0 until there have been two cycles.</returns>
    public int MeanPowerOfTwo()
    {
        return !IsFull ? 0 : (Power >> 1) + (Powers[(Place - 1 - Length) & Mask] >> 1);
    }

    /// <summary>
    /// Takes the mean of the latest power and the one five buckets before it. At 60 Hz the power of a steady current ripples with
    /// a period of 8.3 ms; five buckets are one and a half of them, so that the mean hardly ripples.
    /// </summary>
    /// <returns>The mean in the unit of <see cref="Power"/>.</returns>
    public int SmoothPower()
    {
        return (Power >> 1) + (Powers[(Place - 1 - RippleLag) & Mask] >> 1);
    }

    /// <summary>Takes the mean of the last two buckets, a quarter of a 50 Hz cycle.</summary>
    /// <returns>Mean in sixteenths of a count, from a valid window.</returns>
    public int QuarterMean()
    {
        int[] means = Means;
        int next = Place;
        return (means[(next - 1) & Mask] + means[(next - 2) & Mask]) << (SixteenthsShift - 1);
    }

    /// <summary>Takes the mean of eight in a row.</summary>
    /// <param name="kept"><see cref="Powers"/> or <see cref="Halves"/>.</param>
    /// <param name="back">How many buckets ago the last of them was, 0 to 8.</param>
    /// <returns>The mean.</returns>
    public int MeanOf(int[] kept, int back)
    {
        // Eighths, so that the sum fits into 32 bits; two in a round, to spare the board half of the rounds.
        int mean = 0;
        int end = Place + Kept - back;
        for (int place = end - Length; place < end; place += 2)
        {
            mean += (kept[place & Mask] >> LengthShift) + (kept[(place + 1) & Mask] >> LengthShift);
        }

        return mean;
    }

    /// <summary>Takes the greatest of eight powers.</summary>
    /// <param name="back">How many buckets ago the last of them was, 0 to 8.</param>
    /// <returns>The greatest in the unit of <see cref="Power"/>.</returns>
    public int GreatestPower(int back)
    {
        int greatest = 0;
        for (int i = 1; i <= Length; i++)
        {
            int power = Powers[(Place - back - i) & Mask];
            greatest = power > greatest ? power : greatest;
        }

        return greatest;
    }

    /// <summary>Adds up every second of the last eight means: of a sine of 50 Hz nothing is left in four 5 ms apart.</summary>
    /// <returns>The sum in quarters of a count.</returns>
    public int SumOfMeans()
    {
        int sum = 0;
        int end = Place + Kept;
        for (int place = end - Length; place < end; place += 2)
        {
            sum += Means[place & Mask];
        }

        return sum;
    }

    /// <summary>Takes the difference of two means half a cycle of 50 Hz apart.</summary>
    /// <param name="back">How many buckets ago the later of the two was, 0 to 3.</param>
    /// <returns>The later mean less the earlier one, in quarters of a count.</returns>
    public int Difference(int back)
    {
        int later = Place - 1 - back;
        return Means[later & Mask] - Means[(later - (Length / 2)) & Mask];
    }

    /// <summary>
    /// Takes the greatest power of the last eight answers. At 60 Hz the power ripples, and its greatest is what reaches a level.
    /// </summary>
    /// <returns>Power in the unit of <see cref="Power"/>.</returns>
    public int GreatestPower()
    {
        return IsFull ? GreatestPower(0) : Power;
    }

    /// <summary>
    /// Tells whether one reading made much of the last bucket's mean, and keeps that bucket out of <see cref="PeakToPeak"/> then.
    /// </summary>
    /// <param name="bucket">
    /// The bucket that was taken last; of fewer than three readings none can be told from the others.
    /// </param>
    /// <param name="much">
    /// From which difference on, in sixteenths of a count, the mean without least and greatest is another.
    /// </param>
    public void NoteWildReading(Bucket bucket, int much)
    {
        int last = (Place - 1) & Mask;
        int others = bucket.Count - 2;
        int difference = 0;
        if (others > 0)
        {
            difference = Means[last] - ((bucket.Sum - bucket.Least - bucket.Greatest) * Quarters / others);
        }

        if (difference << SixteenthsShift > much || -difference << SixteenthsShift > much)
        {
            _wildPlace = last;
        }
        else if (_wildPlace == last)
        {
            _wildPlace = -1;
        }
    }

    /// <summary>
    /// Takes the peak-to-peak of the last eight means, without one that a single reading has made. A large tool shows itself
    /// there before a whole cycle of its current has been seen.
    /// </summary>
    /// <returns>Greatest less least mean, in sixteenths of a count: 0.90 to 0.97 of a sine's swing.</returns>
    public int PeakToPeak()
    {
        int[] means = Means;
        int wild = _wildPlace;
        int place = Place + Kept - Length;
        int end = Place + Kept;
        if ((place & Mask) == wild)
        {
            place++;
        }

        int least = means[place & Mask];
        int greatest = least;
        while (++place < end)
        {
            int mean = means[place & Mask];
            if (mean < least)
            {
                if ((place & Mask) != wild)
                {
                    least = mean;
                }
            }
            else if (mean > greatest && (place & Mask) != wild)
            {
                greatest = mean;
            }
        }

        return (greatest - least) << SixteenthsShift;
    }

    /// <summary>Finds <see cref="Least"/> and <see cref="Greatest"/>, and adds up as <see cref="SumOfMeans"/> does.</summary>
    /// <returns>The sum in quarters of a count.</returns>
    public int SumAndExtremes()
    {
        // Two in a round, of which the lower one is no greatest and the higher one no least: that spares the board much.
        int[] means = Means;
        int sum = 0;
        int end = Place + Kept;
        int least = int.MaxValue;
        int greatest = int.MinValue;
        for (int place = end - Length; place < end; place += 2)
        {
            int low = means[place & Mask];
            int high = means[(place + 1) & Mask];
            sum += low;
            if (low > high)
            {
                int other = low;
                low = high;
                high = other;
            }

            least = low < least ? low : least;
            greatest = high > greatest ? high : greatest;
        }

        Least = least << SixteenthsShift;
        Greatest = greatest << SixteenthsShift;
        return sum;
    }

    /// <summary>Takes how much the third harmonic adds to the swing, over the last two cycles.</summary>
    /// <returns>Its share, in 1024ths: the root of its power as a part of that of the mains frequency.</returns>
    public int ThirdHarmonic()
    {
        // All that is kept, so that its order does not matter; sixteenths, so that the sums fit into 32 bits.
        int[] powers = Powers;
        int[] halves = Halves;
        int power = 0;
        int half = 0;
        for (int i = 0; i < Kept; i++)
        {
            power += powers[i] >> KeptShift;
            half += halves[i] >> KeptShift;
        }

        long third = (2L * power) - (4L * half);
        return third <= 0 ? 0 : IntegerMath.SquareRoot(third * ThirdParts / ((2L * half) + 1), 128);
    }

    /// <summary>Starts afresh: what was read before a gap says nothing about what comes after it.</summary>
    public void Reset()
    {
        _filled = 0;
        _isBridged = false;
        IsValid = false;
        IsFull = false;
    }

    // The first power after a gap stands for all those before it, which would be made of means from both sides of it.
    private void ForgetPowers()
    {
        int last = (Place - 1) & Mask;
        for (int i = 0; i < Kept; i++)
        {
            Powers[i] = Powers[last];
            Halves[i] = Halves[last];
        }
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(Means);
        tape.Numbers(Powers);
        tape.Numbers(Halves);
        Place = tape.Number(Place);
        _filled = tape.Number(_filled);
        _isBridged = tape.Flag(_isBridged);
        _first = tape.Number(_first);
        _second = tape.Number(_second);
        _third = tape.Number(_third);
        _wildPlace = tape.Number(_wildPlace);
        Power = tape.Number(Power);
        IsValid = tape.Flag(IsValid);
        IsFull = tape.Flag(IsFull);
    }
}
