using NanoDustSwitch.CostBench.Counted;

namespace NanoDustSwitch.CostBench;

/// <summary>The common methods, fed a bucket's readings at a time as the core is.</summary>
public static class PracticeRun
{
    private static readonly HalfSecondMaximum s_maximum = new HalfSecondMaximum();
    private static readonly CycleRms s_rms = new CycleRms();
    private static readonly RawSwing s_swing = new RawSwing();

    /// <summary>Feeds the maximum of half a second.</summary>
    /// <param name="readings">Where the readings are.</param>
    /// <param name="count">How many to take.</param>
    /// <returns>Whether the tool runs.</returns>
    public static bool Maximum(int[] readings, int count)
    {
        s_maximum.Accept(readings, count);
        return s_maximum.IsRunning;
    }

    /// <summary>Feeds the rms of a cycle.</summary>
    /// <param name="readings">Where the readings are.</param>
    /// <param name="count">How many to take.</param>
    /// <returns>Whether the tool runs.</returns>
    public static bool Rms(int[] readings, int count)
    {
        s_rms.Accept(readings, count);
        return s_rms.IsRunning;
    }

    /// <summary>Feeds the raw swing of a cycle.</summary>
    /// <param name="readings">Where the readings are.</param>
    /// <param name="count">How many to take.</param>
    /// <returns>Whether the tool runs.</returns>
    public static bool Swing(int[] readings, int count)
    {
        s_swing.Accept(readings, count);
        return s_swing.IsRunning;
    }
}
