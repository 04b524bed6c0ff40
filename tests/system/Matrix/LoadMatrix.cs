using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>All places of the load matrix, each with a seed of its own, in an order drawn once and for all.</summary>
internal static class LoadMatrix
{
    // Frequencies in between are drawn for each case.
    private const double InBetween = 0;

    // The slow lane listens to these two, and finds a mains that is 2 Hz off; no mains goes further.
    private static readonly double[] s_slowHertz = [48, 50, 52, 58, 60, 62, 50.2];

    private static readonly double[] s_hertz = [45, 50, 55, 60, 65, InBetween, InBetween];

    private static readonly (string Name, Pace Pace)[] s_paces =
    [
        ("2,000 a second", Pace.Ideal(2000)),

        // Locked to the mains at 50 Hz: each reading falls on the same twenty places of the cycle.
        ("1,000 a second", Pace.Ideal(1000)),
        ("ESP32 pace", Pace.Esp32()),
    ];

    /// <summary>Makes the cases.</summary>
    /// <param name="isRecorded">Whether there is a recording's noise as well.</param>
    /// <returns>The cases.</returns>
    public static IReadOnlyList<MatrixCase> Cases(bool isRecorded)
    {
        bool[] noises = isRecorded ? [false, true] : [false];
        Random random = new(6);
        List<MatrixCase> cases = [];
        foreach (MatrixTool tool in MatrixTools.All)
        {
            // What hides a small tool is no trouble that it could be found in.
            Trouble[] troubles = tool.IsSmall ? [Trouble.None] : Enum.GetValues<Trouble>();
            foreach (double hertz in tool.IsSmall ? s_slowHertz : s_hertz)
            {
                foreach (SensorKind sensor in Enum.GetValues<SensorKind>())
                {
                    foreach (double load in new[] { tool.LightLoad, 1 })
                    {
                        foreach ((string name, Pace pace) in s_paces)
                        {
                            foreach (bool noise in noises)
                            {
                                foreach (Trouble trouble in troubles)
                                {
                                    double drawn = 45 + (20 * random.NextDouble());
                                    double at = hertz == InBetween ? drawn : hertz;
                                    cases.Add(new MatrixCase(
                                        cases.Count + 1, tool, at, sensor, load, name, pace, noise, trouble));
                                }
                            }
                        }
                    }
                }
            }
        }

        MatrixCase[] order = [.. cases];
        random.Shuffle(order);
        return order;
    }
}
