using MathNet.Numerics.Statistics;

namespace NanoDustSwitch.Inspector.Spectrum;

/// <summary>Finds the second of a recorded current that is worth a spectrum: strong, and the same all along.</summary>
internal static class SteadyPart
{
    private const double Tenth = 0.1;
    private const int Tenths = 10;

    // A start surge is stronger than the running current, and a quiet line may be steadier.
    private const double StrongShare = 0.25;

    /// <summary>Finds it.</summary>
    /// <param name="wave">The current.</param>
    /// <returns>A second of it; all of it where it is shorter.</returns>
    public static Wave Of(Wave wave)
    {
        double[] times = wave.Seconds;
        if (times.Length < 2 || times[^1] - times[0] <= Tenth * (Tenths + 1))
        {
            return wave;
        }

        List<int> starts = [0];
        for (int i = 1; i < times.Length; i++)
        {
            if (times[i] - times[0] >= starts.Count * Tenth)
            {
                starts.Add(i);
            }
        }

        if (times[^1] - times[starts[^1]] > 0.9 * Tenth)
        {
            starts.Add(times.Length);
        }

        double[] rms =
        [
            .. Enumerable.Range(0, starts.Count - 1).Select(
                i => Statistics.PopulationStandardDeviation(wave.Amperes[starts[i]..starts[i + 1]])),
        ];
        double[][] seconds = [.. Enumerable.Range(0, rms.Length - Tenths + 1).Select(first => rms[first..(first + Tenths)])];
        double strong = StrongShare * seconds.Max(second => second.Average());
        int best = Enumerable.Range(0, seconds.Length).Where(i => seconds[i].Average() >= strong)
            .MinBy(i => seconds[i].Max() / Math.Max(seconds[i].Min(), 1e-12));
        int from = starts[best];
        int to = best + Tenths < starts.Count ? starts[best + Tenths] : times.Length;
        return wave with { Seconds = times[from..to], Amperes = wave.Amperes[from..to] };
    }
}
