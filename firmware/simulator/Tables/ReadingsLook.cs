namespace NanoDustSwitch.Simulator.Tables;

/// <summary>What readings in amperes look like: where they rest, and whether they can be a tool's current.</summary>
internal static class ReadingsLook
{
    // Whole cycles of 50 and of 60 Hz.
    private const double Window = 0.1;
    private const double WorthAWord = 0.05;
    private const double RunningShare = 0.05;
    private const double MostOfAPlug = 20;
    private const double LeastOfATool = 0.02;
    private const double MainsSpread = 0.1;

    /// <summary>
    /// Takes a direct current off all readings: where the tenth of a second with the least current rests. A transformer lets none
    /// through, and a clamp that was not set to nought adds one.
    /// </summary>
    /// <param name="readings">The readings.</param>
    /// <returns>What is worth saying of it.</returns>
    public static string TakeOffset(Resampler readings)
    {
        float offset = (float)Windows(readings.Values, readings.Rate).MinBy(window => window.Rms).Mean;
        foreach (float[] values in readings.Fine is null ? [readings.Values] : new[] { readings.Values, readings.Fine })
        {
            for (int i = 0; i < values.Length; i++)
            {
                values[i] -= offset;
            }
        }

        return Math.Abs(offset) < WorthAWord
            ? ""
            : $" It rests at {offset:0.00} A, which is taken off: a transformer lets no direct current through.";
    }

    /// <summary>Says what no tool's current looks like.</summary>
    /// <param name="values">The readings, A.</param>
    /// <param name="rate">How many a second.</param>
    /// <returns>The doubts.</returns>
    public static string Doubts(float[] values, double rate)
    {
        double[] rms = [.. Windows(values, rate).Select(window => window.Rms).Order()];
        double greatest = rms[^1];
        double[] running = [.. rms.Where(one => one >= RunningShare * greatest)];
        double usual = running[running.Length / 2];
        if (rms[0] > usual * (1 - MainsSpread) && greatest < usual * (1 + MainsSpread)
            && usual is (> 95 and < 135) or (> 200 and < 255))
        {
            return $" LOOK: {usual:0} all the time is the mains' voltage and no current; --column names another column.";
        }

        return usual > MostOfAPlug
                ? $" LOOK: {usual:0.#} A rms is more than a tool on a plug draws; --unit and --scale change what a number is."
            : greatest < LeastOfATool
                ? $" LOOK: never more than {greatest * 1000:0.##} mA rms; --unit and --scale change what a number is."
            : "";
    }

    private static IEnumerable<(double Mean, double Rms)> Windows(float[] values, double rate)
    {
        int length = Math.Clamp((int)Math.Round(Window * rate), 1, values.Length);
        for (int from = 0; from + length <= values.Length; from += length)
        {
            double sum = 0;
            double squares = 0;
            for (int i = from; i < from + length; i++)
            {
                sum += values[i];
                squares += (double)values[i] * values[i];
            }

            double mean = sum / length;
            yield return (mean, Math.Sqrt(Math.Max(0, (squares / length) - (mean * mean))));
        }
    }
}
