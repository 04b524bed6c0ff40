using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;

namespace NanoDustSwitch.Inspector.Tune;

/// <summary>What a recording shows of a tool: the least tenth of a second of the whole of it, but for starts and ends.</summary>
internal static class ToolMeasure
{
    private const int TenthBuckets = Bucket.ASecond / 10;

    // The tenth in which the tool starts is not whole, and the surge may follow; the last two may hold its end.
    private const int Starting = 1 + (Teacher.SurgeMilliseconds / 100);
    private const int Ending = 2;

    /// <summary>Measures a tool.</summary>
    /// <param name="source">Its recording.</param>
    /// <param name="quiet">What the line shows at most without it, in mA.</param>
    /// <returns>What the tool shows at least, in mA; 0 where none was seen.</returns>
    public static int Of(ReplaySource source, int quiet)
    {
        List<double> tenths = Tenths(source);
        double above = quiet * 1.25;
        List<double> least = [];
        for (int from = 0; from < tenths.Count; from++)
        {
            int to = from;
            while (to < tenths.Count && tenths[to] > above)
            {
                to++;
            }

            // A run too short to have anything after the surge is taken from its beginning.
            int first = from == 0 || to - from <= Starting + Ending ? from : from + Starting;
            int last = to == tenths.Count ? to : to - Ending;
            if (to - from > Ending && last > first)
            {
                least.Add(tenths[first..last].Min());
            }

            from = to;
        }

        return (int)least.DefaultIfEmpty(0).Min();
    }

    private static List<double> Tenths(ReplaySource source)
    {
        List<double> tenths = [];
        double sum = 0;
        int count = 0;
        source.Run(
            source.Settings,
            (now, core) =>
            {
                if (core.IsWindowValid && now > 0 && now <= source.Seconds)
                {
                    sum += core.SwingMilliamperes;
                    if (++count == TenthBuckets)
                    {
                        tenths.Add(sum / count);
                        (sum, count) = (0, 0);
                    }
                }
            });
        return tenths;
    }
}
