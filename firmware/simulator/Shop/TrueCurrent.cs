namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The judge's meter: true current of a wire over the last whole mains cycle, without sensor, noise or converter.
/// Taking a value in costs next to nothing; the cycle is worked out when somebody asks.
/// </summary>
public sealed class TrueCurrent
{
    // A cycle at 45 Hz and 150,000 readings a second; a power of two, so that the ring's end is a mask.
    private const int Size = 4096;
    private const int Mask = Size - 1;

    private readonly double _cycle;
    private readonly long[] _times = new long[Size];
    private readonly double[] _amperes = new double[Size];
    private int _count;
    private int _last = Mask;
    private bool _fresh;
    private double _rms;
    private double _swing;

    /// <summary>Makes the meter.</summary>
    /// <param name="hertz">Mains frequency, Hz.</param>
    public TrueCurrent(double hertz)
    {
        if (!(hertz >= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(hertz), "1 or more");
        }

        _cycle = 1e6 / hertz;
    }

    /// <summary>The last value taken in, A.</summary>
    public double Latest => _amperes[_last];

    /// <summary>Rms over the last cycle, A; over less where less has been seen.</summary>
    public double Rms
    {
        get
        {
            WorkOut();
            return _rms;
        }
    }

    /// <summary>Greatest less least value of the last cycle, A.</summary>
    public double PeakToPeak
    {
        get
        {
            WorkOut();
            return _swing;
        }
    }

    /// <summary>Takes a value in.</summary>
    /// <param name="now">Virtual time, µs, later than the last.</param>
    /// <param name="amperes">Current, A.</param>
    public void Add(long now, double amperes)
    {
        int next = (_last + 1) & Mask;
        _times[next] = now;
        _amperes[next] = amperes;
        _last = next;
        _count = Math.Min(_count + 1, Size);
        _fresh = false;
    }

    private void WorkOut()
    {
        if (_fresh)
        {
            return;
        }

        _fresh = true;
        double later = _amperes[_last];
        double least = later;
        double most = later;
        double area = 0.0;
        double seen = 0.0;
        int at = _last;
        for (int left = _count - 1; left > 0 && seen < _cycle; left--)
        {
            // Trapezoids of the square between one reading and the one before; the oldest is cut where the cycle begins.
            int before = (at - 1) & Mask;
            double earlier = _amperes[before];
            double width = _times[at] - _times[before];
            double part = Math.Min(1.0, (_cycle - seen) / width);
            double square = later * later;
            double cut = square + (((earlier * earlier) - square) * part);
            area += 0.5 * (square + cut) * width * part;
            seen += width;
            if (part >= 1.0)
            {
                least = Math.Min(least, earlier);
                most = Math.Max(most, earlier);
            }

            later = earlier;
            at = before;
        }

        _rms = seen > 0.0 ? Math.Sqrt(area / Math.Min(seen, _cycle)) : Math.Abs(later);
        _swing = most - least;
    }
}
