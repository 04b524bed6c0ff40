using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.CostBench;

/// <summary>The core alone.</summary>
public static class CoreRun
{
    private static readonly Bucket s_bucket = new Bucket();

    /// <summary>Fills a bucket.</summary>
    /// <param name="readings">Where the readings are.</param>
    /// <param name="count">How many to take.</param>
    /// <returns>Whether all of them were taken.</returns>
    public static bool Fill(int[] readings, int count)
    {
        new BucketFiller(4095).Fill(readings, count, Bucket.Microseconds, s_bucket);
        return s_bucket.Count == count;
    }

    /// <summary>Decides bucket for bucket.</summary>
    /// <param name="readings">All readings.</param>
    /// <param name="perBucket">How many make a bucket.</param>
    /// <returns>For each bucket a number that depends on every number of the core's state.</returns>
    public static long[] Decide(int[] readings, int perBucket)
    {
        DetectionCore core = new DetectionCore(Converters.Of(4095, 806), new SettingValues().ToCore(), 0);
        BucketFiller filler = new BucketFiller(4095);
        StateTape tape = new StateTape();
        int[] burst = new int[perBucket];
        long[] states = new long[readings.Length / perBucket];
        for (int i = 0; i < states.Length; i++)
        {
            for (int k = 0; k < perBucket; k++)
            {
                burst[k] = readings[(i * perBucket) + k];
            }

            filler.Fill(burst, perBucket, (i + 1L) * Bucket.Microseconds, s_bucket);
            core.Accept(s_bucket);
            while (core.Notices.Take() != null)
            {
            }

            tape.Write();
            core.Exchange(tape);
            long state = core.IsRelayClosed ? 1 : 0;
            for (int k = 0; k < StateTape.Size; k++)
            {
                state = (state * 31) + tape[k];
            }

            states[i] = state;
        }

        return states;
    }
}
