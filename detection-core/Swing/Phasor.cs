namespace NanoDustSwitch.Detection;

/// <summary>
/// Height and phase of the mains current at a moment, to be compared with those 100 ms later: five whole cycles of 50 Hz and six
/// of 60 Hz. So a current that has been added shows by how much it is, whatever its phase against the other.
/// </summary>
public sealed class Phasor
{
    /// <summary>From one moment to the next, in microseconds.</summary>
    public const long Step = 100 * Time.Millisecond;

    // The square root of one half, times 2^8.
    private const int RootOfHalf = 181;
    private const int RootShift = 8;

    private int _real;
    private int _imaginary;

    /// <summary>Takes the present one.</summary>
    /// <param name="window">A valid window.</param>
    public void Take(SwingWindow window)
    {
        // X1 of the discrete Fourier transform of eight means, by their differences over half a cycle (textbook); the power in
        // SwingWindow is made of the same.
        int second = window.Difference(1);
        int fourth = window.Difference(3);
        _real = window.Difference(0) + (((second - fourth) * RootOfHalf) >> RootShift);
        _imaginary = window.Difference(2) + (((second + fourth) * RootOfHalf) >> RootShift);
    }

    /// <summary>Takes the present one and compares it with the one before.</summary>
    /// <param name="window">A valid window.</param>
    /// <returns>
    /// Swing of the current that has come or gone since the last time, in sixteenths of a count. A mains frequency that is off
    /// by f Hz turns a steady current by 36·f degrees in 100 ms, which shows as a change as well.
    /// </returns>
    public int Move(SwingWindow window)
    {
        long away = -_real;
        long aside = -_imaginary;
        Take(window);
        away += _real;
        aside += _imaginary;
        return IntegerMath.SquareRoot(((away * away) + (aside * aside)) * SwingWindow.SquareOfQuarters / 4, _real);
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _real = tape.Number(_real);
        _imaginary = tape.Number(_imaginary);
    }
}
