using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>What a current shows at the worst: its narrow parts may fall between the readings.</summary>
internal static class WorstShown
{
    private const int Phases = 24;
    private const double Counts = 400;

    /// <summary>Finds the least, over the places of readings on the cycle, of the greatest swing in a cycle.</summary>
    /// <param name="wave">The current.</param>
    /// <param name="rate">Readings a second.</param>
    /// <param name="hertz">Mains frequency.</param>
    /// <returns>A at 1 A rms.</returns>
    public static double Of(Shape wave, int rate, double hertz)
    {
        double worst = double.PositiveInfinity;
        for (int phase = 0; phase < Phases; phase++)
        {
            for (int place = 0; place < Phases; place++)
            {
                worst = Math.Min(worst, At(wave, rate, hertz, phase / (double)Phases, place / (double)Phases));
            }
        }

        return worst;
    }

    private static double At(Shape wave, int rate, double hertz, double turn, double offset)
    {
        SwingWindow window = new();
        int taken = 0;
        double greatest = 0;
        double least = double.PositiveInfinity;
        for (int bucket = 1; bucket <= 6 * SwingWindow.Length; bucket++)
        {
            double sum = 0;
            int count = 0;
            for (; taken + offset < (double)bucket * rate / Bucket.ASecond; taken++)
            {
                double turns = turn + ((taken + offset) / rate * hertz);
                sum += wave.At(turns);
                count++;
            }

            window.Add((int)Math.Round(sum * Counts), count);
            greatest = Math.Max(greatest, window.Swing);
            if (bucket % SwingWindow.Length == 0)
            {
                least = bucket > 2 * SwingWindow.Length ? Math.Min(least, greatest) : least;
                greatest = 0;
            }
        }

        return least * FastLane.AmperesASwing * Line.CountsAnAmpere / Counts;
    }
}
