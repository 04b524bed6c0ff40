namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// What is left of a recorded current without its mean and its mains harmonics, brought to 1 rms. Of a running motor's
/// recording it is the residual of a running motor: brushes, bearings, its converter and the radio about it, and no idle line.
/// </summary>
public static class MainsResidual
{
    /// <summary>Harmonics that are taken out, the fundamental included.</summary>
    public const int Harmonics = 8;

    // The mains is never quite at its nominal frequency: 0.05 Hz off turns it by a fortieth of a turn in half a second, but by
    // a quarter of a turn in a recording of five.
    private const double PieceSeconds = 0.5;

    /// <summary>Works it out.</summary>
    /// <param name="values">The recording.</param>
    /// <param name="rate">Values a second, above 0.</param>
    /// <param name="hertz">Mains frequency of the recording, Hz.</param>
    /// <returns>As many values, of mean 0 and 1 rms; empty where nothing is left.</returns>
    public static double[] Of(double[] values, double rate, double hertz)
    {
        ArgumentNullException.ThrowIfNull(values);
        double[] rest = (double[])values.Clone();
        int pieces = Math.Max(1, (int)(values.Length / (rate * PieceSeconds)));
        for (int i = 0; i < pieces; i++)
        {
            int from = (int)((long)values.Length * i / pieces);
            int to = (int)((long)values.Length * (i + 1) / pieces);
            TakeOut(rest.AsSpan(from, to - from), rate, hertz);
        }

        double square = 0.0;
        foreach (double value in rest)
        {
            square += value * value;
        }

        double rms = Math.Sqrt(square / rest.Length);
        if (!(rms > 1e-9))
        {
            return [];
        }

        for (int i = 0; i < rest.Length; i++)
        {
            rest[i] /= rms;
        }

        return rest;
    }

    // Least squares: the columns are 1 and the sines and cosines; Gram-Schmidt takes each out of the values in turn.
    private static void TakeOut(Span<double> values, double rate, double hertz)
    {
        double[][] columns = new double[1 + (2 * Harmonics)][];
        int count = 0;
        for (int column = 0; column < columns.Length; column++)
        {
            double[] one = Column(column, values.Length, hertz / rate);
            double before = Dot(one, one);
            for (int i = 0; i < count; i++)
            {
                Subtract(one, columns[i], Dot(one, columns[i]));
            }

            // A harmonic that the rate cannot tell from another, or from the mean, is out already.
            double length = Dot(one, one);
            if (length < 1e-6 * before || length == 0.0)
            {
                continue;
            }

            Scale(one, 1.0 / Math.Sqrt(length));
            columns[count++] = one;
            Subtract(values, one, Dot(values, one));
        }
    }

    private static double[] Column(int number, int length, double turnsAValue)
    {
        double[] values = new double[length];
        double turns = ((number + 1) / 2) * turnsAValue;
        for (int i = 0; i < length; i++)
        {
            (double sine, double cosine) = Math.SinCos(2.0 * Math.PI * turns * i);
            values[i] = number % 2 == 0 ? cosine : sine;
        }

        return values;
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0.0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    private static void Subtract(Span<double> from, ReadOnlySpan<double> what, double times)
    {
        for (int i = 0; i < from.Length; i++)
        {
            from[i] -= times * what[i];
        }
    }

    private static void Scale(Span<double> values, double factor)
    {
        for (int i = 0; i < values.Length; i++)
        {
            values[i] *= factor;
        }
    }
}
