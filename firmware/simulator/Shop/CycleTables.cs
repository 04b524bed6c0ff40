namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Voltages at the steps of a mains cycle, of 1 rms.</summary>
internal static class CycleTables
{
    /// <summary>√2 times the sine.</summary>
    internal static readonly double[] Volts = Make(Math.Sin);

    /// <summary>√2 times the cosine.</summary>
    internal static readonly double[] Ahead = Make(Math.Cos);

    /// <summary>The voltage of a mains with harmonics.</summary>
    /// <param name="flattening">As <see cref="Mains.Flattening"/>.</param>
    /// <returns>Its values; those of the sine where there are none.</returns>
    internal static double[] Of(double flattening) =>
        flattening == 0.0 ? Volts : Make(angle => Mains.Flattened(Math.Sin(angle), flattening));

    private static double[] Make(Func<double, double> shape) =>
    [
        .. Enumerable.Range(0, LoadEquations.Steps)
            .Select(i => Math.Sqrt(2.0) * shape(2.0 * Math.PI * i / LoadEquations.Steps)),
    ];
}
