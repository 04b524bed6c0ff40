using MathNet.Numerics.LinearAlgebra;

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
        int pieces = Math.Max(1, (int)(values.Length / (rate * PieceSeconds)));
        List<double> rest = [];
        for (int i = 0; i < pieces; i++)
        {
            int from = (int)((long)values.Length * i / pieces);
            int to = (int)((long)values.Length * (i + 1) / pieces);
            rest.AddRange(WithoutHarmonics(values[from..to], rate, hertz));
        }

        double rms = Math.Sqrt(rest.Sum(value => value * value) / rest.Count);
        return rms > 1e-9 ? [.. rest.Select(value => value / rms)] : [];
    }

    // Least squares: the columns are 1 and the sines and cosines; Gram-Schmidt takes each out of the values in turn.
    private static Vector<double> WithoutHarmonics(double[] values, double rate, double hertz)
    {
        Vector<double> rest = Vector<double>.Build.Dense(values);
        List<Vector<double>> columns = [];
        for (int number = 0; number <= 2 * Harmonics; number++)
        {
            Vector<double> column = Vector<double>.Build.Dense(Column(number, values.Length, hertz / rate));
            double before = column.DotProduct(column);
            foreach (Vector<double> other in columns)
            {
                column -= other * column.DotProduct(other);
            }

            // A harmonic that the rate cannot tell from another, or from the mean, is out already.
            double length = column.DotProduct(column);
            if (length >= 1e-6 * before && length > 0.0)
            {
                column /= Math.Sqrt(length);
                columns.Add(column);
                rest -= column * rest.DotProduct(column);
            }
        }

        return rest;
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
}
