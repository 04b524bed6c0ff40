namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The 256 layers of equal area under the normal curve (Marsaglia and Tsang 2000, from memory).
/// </summary>
internal static class Ziggurat
{
    /// <summary>Where the tail begins, in deviations.</summary>
    internal const double Outermost = 3.6541528853610088;

    private const int Layers = 256;
    private const double LayerArea = 0.00492867323399;

    private static readonly double[] s_edges = new double[Layers + 1];
    private static readonly double[] s_heights = new double[Layers + 1];

    static Ziggurat()
    {
        // Layer 0 holds the tail as well: its rectangle is drawn wider, as wide as gives it the same area.
        s_edges[0] = LayerArea / Curve(Outermost);
        s_edges[1] = Outermost;
        for (int i = 2; i < Layers; i++)
        {
            double inner = s_edges[i - 1];
            s_edges[i] = Math.Sqrt(-2.0 * Math.Log((LayerArea / inner) + Curve(inner)));
        }

        s_edges[Layers] = 0.0;
        for (int i = 0; i <= Layers; i++)
        {
            s_heights[i] = Curve(s_edges[i]);
        }
    }

    /// <summary>Half the width of a layer, in deviations.</summary>
    /// <param name="layer">0 (the lowest) to 256 (the top, of no width).</param>
    internal static double Edge(int layer) => s_edges[layer];

    /// <summary>Height of the curve at the layer's edge, 0 to 1.</summary>
    /// <param name="layer">0 to 256.</param>
    internal static double Height(int layer) => s_heights[layer];

    private static double Curve(double x) => Math.Exp(-0.5 * x * x);
}
