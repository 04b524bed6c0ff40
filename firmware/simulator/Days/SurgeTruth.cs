namespace NanoDustSwitch.Simulator.Days;

/// <summary>
/// What counts as a vacuum started inside the tool's start surge: a command while the tool's true rms of the last mains cycle is
/// above 1.5 times of what it settles at, idling. Both come from the shop and never from the detector.
/// </summary>
internal static class SurgeTruth
{
    /// <summary>From this multiple of the settled current on it is the surge: an agreed figure, no source.</summary>
    public const double Inside = 1.5;

    /// <summary>Above this multiple the current has not yet come near its settled value.</summary>
    public const double Near = 1.1;

    /// <summary>Judges a command.</summary>
    /// <param name="cycleRms">True rms of the tool's current over the last mains cycle, A.</param>
    /// <param name="settled">What the tool's current settles at, A rms, above 0.</param>
    /// <returns>Whether it came inside the surge.</returns>
    public static bool IsInside(double cycleRms, double settled) => cycleRms > Inside * settled;
}
