namespace NanoDustSwitch.Simulator.Tables;

/// <summary>
/// Takes the readings of a table one by one and keeps those that the board would take: the nearest to each time.
/// </summary>
/// <remarks>A converter holds a moment and no mean. For the spectrum means of more of them are kept.</remarks>
internal sealed class Resampler
{
    // The virtual board reads so many a second at most; of an oscilloscope's it takes as many as it is planned to.
    private const double MostRate = 20_000;
    private const double BoardRate = 2000;
    private const double MostForSpectrum = 10_000;

    private readonly int _together;
    private int _taken;
    private int _means;
    private int _inMean;
    private double _sum;
    private double _lastTime = double.NegativeInfinity;
    private double _last;

    /// <summary>Initializes a new instance of the <see cref="Resampler"/> class.</summary>
    /// <param name="times">When the rows were read.</param>
    /// <param name="rows">The number of rows.</param>
    public Resampler(TableTimes times, int rows)
    {
        Rate = times.IsEven && times.Rate <= MostRate ? times.Rate : BoardRate;
        Values = new float[(int)(((rows - 1) / times.Rate * Rate) + 1e-6) + 1];
        if (times.IsEven && Rate < times.Rate)
        {
            _together = Math.Max(1, (int)(times.Rate / MostForSpectrum));
            Fine = new float[rows / _together];
            FineRate = times.Rate / _together;
        }
    }

    /// <summary>Gets readings a second of <see cref="Values"/>.</summary>
    public double Rate { get; }

    /// <summary>Gets the readings at even distances.</summary>
    public float[] Values { get; }

    /// <summary>Gets means of more of them; null where there are no more.</summary>
    public float[]? Fine { get; }

    /// <summary>Gets how many a second these are.</summary>
    public double FineRate { get; }

    /// <summary>Takes the next reading.</summary>
    /// <param name="time">When it was read, s from the first on.</param>
    /// <param name="value">The reading.</param>
    public void Add(double time, double value)
    {
        double middle = (_lastTime + time) / 2;
        while (_taken < Values.Length && _taken / Rate < middle)
        {
            Values[_taken++] = (float)_last;
        }

        (_lastTime, _last) = (time, value);
        if (Fine is not null)
        {
            _sum += value;
            if (++_inMean == _together && _means < Fine.Length)
            {
                Fine[_means++] = (float)(_sum / _together);
                _sum = 0;
                _inMean = 0;
            }
        }
    }

    /// <summary>There are no more.</summary>
    public void End() => Values.AsSpan(_taken).Fill((float)_last);
}
