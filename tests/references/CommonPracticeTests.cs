using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>
/// What makers of such switches report: a 20 A Hall sensor of 100 mV/A on a 10-bit converter at 5 V rests at 512 of 0 to
/// 1023, a contractor's saw swings it from about 300 to 700, half a second of readings finds that for certain, and the vacuum
/// runs on for 5 s. Common practice, no source.
/// </summary>
[TestClass]
public sealed class CommonPracticeTests
{
    private const int Rate = 2000;
    private const int PerBucket = Rate / Bucket.ASecond;
    private const double Hertz = 60;
    private const int MidScale = 512;

    [TestMethod]
    public void The_saw_is_seen_within_half_a_second_and_the_vacuum_runs_on_for_five()
    {
        DetectionCore core = Core();
        Feed(core, 0, 2, 0);
        Assert.IsFalse(core.IsToolRunning, "idle");

        Feed(core, 2, 2.5, 200);
        Assert.IsTrue(core.IsToolRunning, "after half a second of the saw");

        // 200 counts of 4.883 mV are 9.8 A peak at 100 mV/A, 6.9 A rms.
        Assert.AreEqual(6900, core.Milliamperes, 100);

        // A first start without a surge may be the plateau of a motor that runs up, so it is watched for 0.8 s.
        Feed(core, 2.5, 3, 200);
        Assert.IsTrue(core.IsRelayClosed, "after a second of the saw");

        Feed(core, 3, 7.9, 0);
        Assert.IsTrue(core.IsRelayClosed, "4.9 s after the saw");
        Feed(core, 7.9, 8.2, 0);
        Assert.IsFalse(core.IsRelayClosed, "5.2 s after the saw");
    }

    [TestMethod]
    public void An_ampere_is_twenty_counts_and_a_half()
    {
        DetectionCore core = Core();
        double peakCounts = core.Scale.ToSwing(1000) / (double)SensorScale.PartsACount / 2 / 0.974;

        // 1 A rms is √2 A peak.
        Assert.AreEqual(20.5 * Math.Sqrt(2), peakCounts, 0.3);
    }

    private static DetectionCore Core()
    {
        CoreSettings settings = new SettingValues().ToCore();
        settings.MicrovoltsAnAmpere = 100_000;
        return new DetectionCore(new ConverterScale(1023, 4883, 2000, 3000), settings, 0);
    }

    private static void Feed(DetectionCore core, double from, double to, int peak)
    {
        BucketFiller filler = new(1023);
        Bucket bucket = new();
        int[] readings = new int[PerBucket];
        int last = (int)Math.Round(to * Bucket.ASecond);
        for (int i = (int)Math.Round(from * Bucket.ASecond); i < last; i++)
        {
            for (int k = 0; k < PerBucket; k++)
            {
                double seconds = ((i * PerBucket) + k) / (double)Rate;

                // A count of ripple, as any live converter shows: one that never changes is taken for frozen.
                readings[k] = MidScale + (int)Math.Round(peak * Math.Sin(2 * Math.PI * Hertz * seconds)) + (k & 1);
            }

            filler.Fill(readings, PerBucket, (i + 1L) * Bucket.Microseconds, bucket);
            core.Accept(bucket);
        }
    }
}
