using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>A kind of tool.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Draw">Draws one for a mains frequency.</param>
internal sealed record StartKind(string Name, Func<ShopRandom, double, StartLoad> Draw);
