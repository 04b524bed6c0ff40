namespace NanoDustSwitch.Simulator.Shop;

/// <summary>What a triac that fires late leaves of the voltage's rms (textbook identity).</summary>
internal static class FiringTable
{
    /// <summary>Rms that is left, 1 to 0, by the step of the half cycle at which it fires.</summary>
    internal static readonly double[] Volts =
    [
        .. Enumerable.Range(0, (LoadEquations.Steps / 2) + 1)
            .Select(i => 2.0 * Math.PI * i / LoadEquations.Steps)
            .Select(angle => 1.0 - (angle / Math.PI) + (Math.Sin(2.0 * angle) / (2.0 * Math.PI)))
            .Select(square => Math.Sqrt(Math.Max(0.0, square))),
    ];
}
