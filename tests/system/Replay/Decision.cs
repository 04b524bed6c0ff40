using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>What the core has decided after a bucket, and what it decided it by.</summary>
internal sealed record Decision(
    long End,
    bool Runs,
    bool IsClosed,
    VacuumState State,
    int Swing,
    int Start,
    int Stop,
    int Noise,
    int Amperes,
    int Midpoint,
    int Vacuum,
    int Faults)
{
    /// <summary>Asks the core.</summary>
    /// <param name="end">The bucket's end, in microseconds.</param>
    /// <param name="core">The core.</param>
    /// <returns>Its decision.</returns>
    public static Decision Of(long end, DetectionCore core) =>
        new(
            end,
            core.IsToolRunning,
            core.IsRelayClosed,
            core.Vacuum.State,
            core.Swing,
            core.StartMilliamperes,
            core.StopMilliamperes,
            core.NoiseMilliamperes,
            core.Milliamperes,
            core.MidpointMillivolts,
            core.VacuumMilliamperes,
            core.Faults.Standing);
}
