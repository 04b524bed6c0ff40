namespace NanoDustSwitch.Detection;

/// <summary>
/// Height and phase of a steady mains current, carried on in time from one look to the next, so that a current that has come or
/// gone since shows by how much it is, whatever its phase against the other.
/// </summary>
/// <remarks>
/// Looks are <see cref="Step"/> apart: five whole cycles of 50 Hz and six of 60 Hz. A mains that is off its frequency turns the
/// phasor by the same angle from each look to the next, which is learned.
/// </remarks>
public sealed class SteadyPhasor
{
    /// <summary>From one look to the next, in microseconds.</summary>
    public const long Step = 100 * Time.Millisecond;

    /// <summary>Reads that make a look.</summary>
    public const int Reads = 4;

    /// <summary>From one read to the next, in microseconds.</summary>
    public const long ReadStep = Step / Reads;

    // So many looks the angle is learned from at first; later by a sixteenth of what it is off.
    private const int LooksToLearn = 7;
    private const int TurnShift = 4;
    private const int SumShift = 11;

    // The square root of one half, times 2^8.
    private const int RootOfHalf = 181;
    private const int RootShift = 8;

    // Sine and cosine are in 4096ths, so that their products with a phasor fit into 32 bits.
    private const int WholeShift = 12;
    private const int Whole = 1 << WholeShift;

    private const int ReadsShift = 2;
    private const int Looked = -1;
    private const int Mask = SwingWindow.Mask;
    private const int Half = SwingWindow.Length / 2;

    // The distance of the two windows of a read, in buckets.
    private const int Apart = 5;

    // The same is what is within a sixteenth, or within the usual noise; steady is what is within an eighth. These are squares.
    private const int SameShift = 8;
    private const int SteadyShift = 6;
    private const int SameNoise = 4;
    private const int SteadyNoise = 6;
    private const int FirstNoiseShift = 9;
    private const int NoiseShift = 3;

    // Two currents are seldom more than 60 degrees apart: seven eighths of the cosine, and what is missing to the whole square.
    private const int CosineEighths = 7;
    private const int SineSquareParts = 15;
    private const int SquareShift = 6;

    // The change came at once when it was not to be seen in the fourth or fifth look before: less than a third of it.
    private const int SharpPart = 9;

    // Powers of the last reads, and after them how far the last looks were away, all as squares of which the lowest bits are left
    // out. An array takes the device less memory than fields.
    private const int Kept = 16;
    private const int KeptLooks = 4;
    private const int KeptShift = 6;

    private readonly int[] _kept = new int[Kept + KeptLooks];
    private int _place;
    private int _real;
    private int _imaginary;
    private int _lastReal;
    private int _lastImaginary;
    private int _beforeReal;
    private int _beforeImaginary;
    private int _sine;
    private int _cosine;
    private long _along;
    private long _across;
    private int _looks;
    private int _reads;
    private int _real50;
    private int _imaginary50;
    private int _real60;
    private int _imaginary60;
    private long _noise;
    private long _least;
    private long _before;

    /// <summary>Whether the last look showed what is carried on.</summary>
    public bool IsSame;

    /// <summary>Whether the last look showed the same as the one before it.</summary>
    public bool IsSteady;

    /// <summary>Gets a value indicating whether the current has changed at once, and not little by little.</summary>
    public bool IsSharp
    {
        get
        {
            // The ring holds four: what is about to be overwritten is the fourth last, and the one before it is kept apart.
            long fourth = (long)_kept[Kept + LookPlace(0)] << KeptShift;
            long least = fourth < _before ? fourth : _before;
            return least < Square(_lastReal - _real, _lastImaginary - _imaginary) / SharpPart || least < SameNoise * _noise;
        }
    }

    /// <summary>Gets a value indicating whether there was more on the line at the last look than what is carried on.</summary>
    public bool IsMore
    {
        get { return Square(_lastReal, _lastImaginary) > Square(_real, _imaginary); }
    }

    /// <summary>Gets a value indicating whether the last look was an even one.</summary>
    public bool IsEven
    {
        get { return (_place & Reads) == 0; }
    }

    /// <summary>Begins anew.</summary>
    public void Begin()
    {
        _looks = 0;
        _along = 0;
        _across = 0;
        _lastReal = 0;
        _lastImaginary = 0;
        IsSame = false;
        IsSteady = false;
        Turn(0);
        Watch(false);
        Skip();
    }

    /// <summary>Reads, <see cref="Reads"/> times between two looks.</summary>
    /// <param name="window">A full window.</param>
    public void Read(SwingWindow window)
    {
        // X1 of the discrete Fourier transform of eight means, by their differences over half a cycle (textbook). Eight means
        // hold no whole cycle of 60 Hz, so that a part of the mirror image is in it. Five buckets are three quarters of a cycle
        // of 60 Hz: X1 of now and that of five buckets ago, turned back by as much, have the same main part and opposite images.
        int[] means = window.Means;
        int last = window.Place + Mask;
        int second = means[(last - 1) & Mask] - means[(last - (1 + Half)) & Mask];
        int fourth = means[(last - 3) & Mask] - means[(last - (3 + Half)) & Mask];
        int real = means[last & Mask] - means[(last - Half) & Mask];
        int imaginary = means[(last - 2) & Mask] - means[(last - (2 + Half)) & Mask];
        last -= Apart;
        int sixth = means[(last - 1) & Mask] - means[(last - (1 + Half)) & Mask];
        int eighth = means[(last - 3) & Mask] - means[(last - (3 + Half)) & Mask];
        real += means[(last - 2) & Mask] - means[(last - (2 + Half)) & Mask]
            + (((second - fourth + sixth + eighth) * RootOfHalf) >> RootShift);
        imaginary += means[(last - Half) & Mask] - means[last & Mask]
            + (((second + fourth - sixth + eighth) * RootOfHalf) >> RootShift);
        int high = real >> (KeptShift / 2);
        int wide = imaginary >> (KeptShift / 2);
        _kept[_place] = (high * high) + (wide * wide);
        _place = (_place + 1) & (Kept - 1);

        // From one read to the next 50 Hz turns by 90 degrees and 60 Hz by 180.
        int before = _imaginary50;
        _imaginary50 = imaginary + _real50;
        _real50 = real - before;
        _real60 = real - _real60;
        _imaginary60 = imaginary - _imaginary60;
        _reads++;
    }

    /// <summary>Carries on to this moment, and looks; <see cref="Weigh"/> tells what it showed.</summary>
    public void Look()
    {
        int carried = ((_real * _cosine) - (_imaginary * _sine)) >> WholeShift;
        _imaginary = ((_real * _sine) + (_imaginary * _cosine)) >> WholeShift;
        _real = carried;
        if (_reads != Reads)
        {
            Skip();
            return;
        }

        _beforeReal = _lastReal;
        _beforeImaginary = _lastImaginary;
        bool is60 = Square(_real60, _imaginary60) > Square(_real50, _imaginary50);
        _lastReal = (is60 ? _real60 : _real50) >> ReadsShift;
        _lastImaginary = (is60 ? _imaginary60 : _imaginary50) >> ReadsShift;
        Skip();
        _reads = Looked;
    }

    /// <summary>Compares the last look with what is carried on and with the look before.</summary>
    /// <returns>True when there is an answer: all was read, and the angle is known.</returns>
    public bool Weigh()
    {
        if (_reads != Looked)
        {
            return false;
        }

        _reads = 0;

        if (_looks < LooksToLearn)
        {
            Learn();
            return false;
        }

        Compare();
        return true;
    }

    /// <summary>Takes what the last look showed, which is the same, and learns from it.</summary>
    public void Follow()
    {
        long aside = (((long)_lastImaginary * _real) - ((long)_lastReal * _imaginary)) << WholeShift;
        Turn(_sine + (int)((aside / (Square(_real, _imaginary) + 1)) >> TurnShift));
        Take();
    }

    /// <summary>Takes what the last look showed as that with which the next ones are compared.</summary>
    public void Take()
    {
        _real = _lastReal;
        _imaginary = _lastImaginary;
    }

    /// <summary>
    /// Looks for small changes from now on, or for those of the usual size. Small is half of what is carried on, or of what has
    /// come to it, whichever is less: either of the two may go.
    /// </summary>
    /// <param name="isSmaller">Whether for small ones.</param>
    public void Watch(bool isSmaller)
    {
        long first = Square(_real, _imaginary);
        long second = Square(_lastReal - _real, _lastImaginary - _imaginary);
        _least = !isSmaller ? long.MaxValue : (first < second ? first : second) >> 2;
    }

    /// <summary>Tells how high the current is that has come or gone.</summary>
    /// <param name="swing">Swing of what was on the line at the last look, in sixteenths of a count.</param>
    /// <returns>Its swing in the same unit.</returns>
    public int Difference(int swing)
    {
        return Scaled(Square(_lastReal - _real, _lastImaginary - _imaginary), swing);
    }

    /// <summary>Tells how high the current is that is carried on.</summary>
    /// <param name="swing">Swing of what was on the line at the last look, in sixteenths of a count.</param>
    /// <returns>Its swing in the same unit.</returns>
    public int Carried(int swing)
    {
        return Scaled(Square(_real, _imaginary), swing);
    }

    /// <summary>
    /// Tells by how much what was on the line at the last look leads what is carried on: the product of both and of the sine of
    /// the angle between them, as swings.
    /// </summary>
    /// <param name="swing">Swing of what was on the line at the last look, in sixteenths of a count.</param>
    /// <returns>The product.</returns>
    public long Lead(int swing)
    {
        long lead = ((long)_lastImaginary * _real) - ((long)_lastReal * _imaginary);
        return lead * swing / (Square(_lastReal, _lastImaginary) + 1) * swing;
    }

    /// <summary>
    /// Tells whether the current has fallen within a cycle or two, as by a switch: in at most one of the last reads it was
    /// between a fifth and four fifths of the way.
    /// </summary>
    /// <returns>True when it has, or has fallen too little to tell.</returns>
    public bool HasFallenAtOnce()
    {
        long now = Square(_lastReal, _lastImaginary) >> KeptShift;
        long fall = (Square(_real, _imaginary) >> KeptShift) - now;
        int low = (int)(now + (fall / 5));
        int high = (int)(now + (fall / 5 * 4));
        int between = 0;
        for (int i = 0; i < Kept; i++)
        {
            int power = _kept[i];
            between += power > low && power < high ? 1 : 0;
        }

        return between < 2 || fall < now / 8;
    }

    /// <summary>
    /// Tells what one current is of two together whose angle is not known: the law of cosines, for a usual angle.
    /// </summary>
    /// <param name="swing">Swing of both together, in sixteenths of a count.</param>
    /// <param name="other">Swing of the other one.</param>
    /// <returns>Its swing, which may be below 0 where the angle is another.</returns>
    public static int Without(int swing, int other)
    {
        long square = ((long)swing * swing) - (((long)other * other * SineSquareParts) >> SquareShift);
        return IntegerMath.SquareRoot(square, swing) - (other / 8 * CosineEighths);
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        tape.Numbers(_kept);
        _place = tape.Number(_place);
        _real = tape.Number(_real);
        _imaginary = tape.Number(_imaginary);
        _lastReal = tape.Number(_lastReal);
        _lastImaginary = tape.Number(_lastImaginary);
        _beforeReal = tape.Number(_beforeReal);
        _beforeImaginary = tape.Number(_beforeImaginary);
        _sine = tape.Number(_sine);
        _cosine = tape.Number(_cosine);
        _along = tape.Number(_along);
        _across = tape.Number(_across);
        _looks = tape.Number(_looks);
        _reads = tape.Number(_reads);
        _real50 = tape.Number(_real50);
        _imaginary50 = tape.Number(_imaginary50);
        _real60 = tape.Number(_real60);
        _imaginary60 = tape.Number(_imaginary60);
        _noise = tape.Number(_noise);
        _least = tape.Number(_least);
        _before = tape.Number(_before);
        IsSame = tape.Flag(IsSame);
        IsSteady = tape.Flag(IsSteady);
    }

    private void Compare()
    {
        long square = Square(_real, _imaginary);
        long away = Square(_lastReal - _real, _lastImaginary - _imaginary);
        long most = square >> SameShift;
        IsSame = away < (most < _least ? most : _least) || away < SameNoise * _noise;
        if (!IsSame)
        {
            int real = ((_beforeReal * _cosine) - (_beforeImaginary * _sine)) >> WholeShift;
            int imaginary = ((_beforeReal * _sine) + (_beforeImaginary * _cosine)) >> WholeShift;
            long moved = Square(_lastReal - real, _lastImaginary - imaginary);
            IsSteady = moved < Square(_lastReal, _lastImaginary) >> SteadyShift || moved < SteadyNoise * _noise;
        }

        int place = Kept + LookPlace(-1);
        _before = (long)_kept[place] << KeptShift;
        _kept[place] = (int)(away >> KeptShift);
        if (IsSame || !IsSteady)
        {
            // A change must not count as noise.
            most = (SameNoise * _noise) + most;
            _noise += ((away < most ? away : most) - _noise) >> NoiseShift;
        }
    }

    // The mean angle between two looks: that of the sum of all products of a look with the one before.
    private void Learn()
    {
        _along += ((long)_lastReal * _beforeReal) + ((long)_lastImaginary * _beforeImaginary);
        _across += ((long)_lastImaginary * _beforeReal) - ((long)_lastReal * _beforeImaginary);
        Take();
        if (++_looks == LooksToLearn)
        {
            int along = (int)(_along >> SumShift);
            int across = (int)(_across >> SumShift);
            int root = IntegerMath.SquareRoot(Square(along, across), along) + 1;
            Turn(along <= 0 ? 0 : (int)(((long)across << WholeShift) / root));
            _noise = Square(_real, _imaginary) >> FirstNoiseShift;
        }
    }

    private void Turn(int sine)
    {
        // cos x from sin x: 1 - s²/2 - s⁴/8, which is exact within a thousandth up to 30 degrees.
        int part = (sine * sine) >> (WholeShift + 1);
        _sine = sine;
        _cosine = Whole - part - ((part * part) >> (WholeShift + 1));
    }

    // Looks come with every fourth read.
    private int LookPlace(int later)
    {
        return ((_place / Reads) + later) & (KeptLooks - 1);
    }

    private void Skip()
    {
        _reads = 0;
        _real50 = 0;
        _imaginary50 = 0;
        _real60 = 0;
        _imaginary60 = 0;
    }

    // A swing has 17 bits, and a square 34.
    private int Scaled(long square, int swing)
    {
        long now = Square(_lastReal, _lastImaginary);
        return IntegerMath.SquareRoot(square * swing / (now + 1) * swing, swing);
    }

    private static long Square(int real, int imaginary)
    {
        return ((long)real * real) + ((long)imaginary * imaginary);
    }
}
