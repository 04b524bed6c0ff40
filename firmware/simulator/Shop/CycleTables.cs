namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Sine and cosine at the steps of a mains cycle, of 1 rms.</summary>
internal static class CycleTables
{
    /// <summary>The voltage: √2 times the sine.</summary>
    internal static readonly double[] Volts = Make(Math.Sin);

    /// <summary>√2 times the cosine.</summary>
    internal static readonly double[] Ahead = Make(Math.Cos);

    private static double[] Make(Func<double, double> shape) =>
    [
        .. Enumerable.Range(0, LoadEquations.Steps)
            .Select(i => Math.Sqrt(2.0) * shape(2.0 * Math.PI * i / LoadEquations.Steps)),
    ];
}
