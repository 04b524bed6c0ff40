using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>White and normal.</summary>
/// <param name="random">Where it is drawn from.</param>
internal sealed class WhiteNoise(ShopRandom random) : INoise
{
    /// <inheritdoc/>
    public double Next() => random.NextGaussian();
}
